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
})();
