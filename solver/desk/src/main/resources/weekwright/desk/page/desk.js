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

  const desk = () => document.getElementById('desk');

  /** Asks for what is new of a search or of the week, one question at a time; what comes meanwhile is asked for after. */
  const asked = { busy: false, again: null };
  function ask(path, target, swap) {
    if (asked.busy) {
      asked.again = [path, target, swap];
      return;
    }
    asked.busy = true;
    const look = new URLSearchParams(desk().dataset.look);
    htmx.ajax('GET', desk().dataset.base + path + '?' + look, { target, swap }).finally(() => {
      asked.busy = false;
      const next = asked.again;
      asked.again = null;
      if (next) {
        ask(...next);
      }
    });
  }

  /** Listens for news of the folder while the page is seen; hidden pages take no line. */
  let line = null;
  function listen() {
    if (!desk() || document.hidden) {
      if (line) {
        line.close();
        line = null;
      }
      return;
    }
    if (line) {
      return;
    }
    line = new EventSource(desk().dataset.base + '/events');
    line.addEventListener('search', () => ask('/search', '#search', 'outerHTML'));
    line.addEventListener('revision', (event) => {
      if (Number(event.data) > Number(desk().dataset.revision)) {
        ask('', '#desk', 'outerHTML');
      }
    });
  }
  document.addEventListener('visibilitychange', listen);
  window.addEventListener('pagehide', () => line && line.close());
  listen();

  /** A first guess at the clocks that are meant: those of this machine. */
  all('[data-own-zone]').forEach((field) => {
    if (field.value === '') {
      field.value = Intl.DateTimeFormat().resolvedOptions().timeZone || '';
    }
  });
})();
