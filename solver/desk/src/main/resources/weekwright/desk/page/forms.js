// What forms need besides the server: a field that is at fault says so to those who cannot see the words beside it.
'use strict';
(() => {
  document.addEventListener('htmx:oobAfterSwap', () => {
    document.querySelectorAll('.form [aria-describedby]').forEach((field) => {
      const fault = document.getElementById(field.getAttribute('aria-describedby').split(' ').pop());
      const wrong = fault !== null && fault.textContent.trim() !== '';
      if (!field.matches('input, select, textarea')) {
        return;
      }
      if (wrong) {
        field.setAttribute('aria-invalid', 'true');
      } else {
        field.removeAttribute('aria-invalid');
      }
    });
  });

  // What takes some seconds says so meanwhile; whoever comes back to the page finds it as it was.
  document.addEventListener('submit', (event) => {
    event.target.querySelectorAll('[data-busy]').forEach((one) => { one.textContent = one.dataset.busy; });
  });
  window.addEventListener('pageshow', () => {
    document.querySelectorAll('[data-busy]').forEach((one) => { one.textContent = ''; });
  });
})();
