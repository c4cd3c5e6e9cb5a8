// The page's own script: what a pointer and a keyboard do, and nothing else. All that is shown comes from the server.
'use strict';
(() => {
  const all = (selector, within) => Array.from((within || document).querySelectorAll(selector));

  /** Lights the cards of the finding that is pressed; pressing it again puts them out. */
  function light(button) {
    const was = button.getAttribute('aria-pressed') === 'true';
    all('button.what[aria-pressed="true"]').forEach((other) => other.setAttribute('aria-pressed', 'false'));
    all('.lit').forEach((card) => card.classList.remove('lit'));
    if (was) {
      return;
    }
    button.setAttribute('aria-pressed', 'true');
    const about = new Set(button.dataset.about.split(' '));
    const cards = all('[data-id]').filter((card) => about.has(card.dataset.id));
    cards.forEach((card) => card.classList.add('lit'));
    if (cards.length > 0) {
      cards[0].scrollIntoView({ block: 'nearest', inline: 'nearest' });
    }
  }

  document.addEventListener('click', (event) => {
    const finding = event.target.closest('button.what');
    if (finding) {
      light(finding);
    }
  });

  /** A first guess at the clocks that are meant: those of this machine. */
  all('[data-own-zone]').forEach((field) => {
    if (field.value === '') {
      field.value = Intl.DateTimeFormat().resolvedOptions().timeZone || '';
    }
  });
})();
