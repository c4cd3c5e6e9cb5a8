// The page's own script: what a pointer and a keyboard do, and nothing else. All that is shown comes from the server.
'use strict';
(() => {
  const all = (selector, within) => Array.from((within || document).querySelectorAll(selector));
  const desk = () => document.getElementById('desk');
  const address = (path, values) => {
    const query = new URLSearchParams(desk().dataset.look);
    Object.entries(values || {}).forEach(([name, value]) => query.set(name, value));
    return desk().dataset.base + path + '?' + query;
  };

  /* ---- findings ---- */

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

  /* ---- what is new ---- */

  /**
   * Asks for what is new of a search or of the week, one question at a time. What a coach does comes first: an answer that
   * arrives while a session is in the hand, or after something was pressed, is older than what is then shown and is asked
   * for again.
   */
  const NEWS = { '#search': '/search', '#could-go': '/could-go', '#desk': '' };
  const asked = { busy: false, again: new Map(), pressed: 0, awaited: new Set() };
  const mayAsk = () => !asked.busy && !held.session && !held.again && asked.awaited.size === 0;
  const shown = () => Number(desk().dataset.revision);
  /** Whether the page shows already what it hears of: a revision or a later one, a search as it is now. */
  const KNOWN = {
    '#desk': (revision) => revision <= shown(),
    '#search': (number) => number === Number(document.getElementById('search').dataset.number),
  };
  const later = (target, upTo) => asked.again.set(target, Math.max(upTo, asked.again.get(target) || 0));
  /** Asks for a part as soon as may be, if the page does not show by then what was heard of. */
  function ask(target, upTo = Infinity) {
    later(target, upTo);
    askAgain();
  }
  async function askAgain() {
    Object.entries(KNOWN)
      .filter(([target, known]) => asked.again.has(target) && known(asked.again.get(target)))
      .forEach(([target]) => asked.again.delete(target));
    if (asked.again.size === 0 || !mayAsk()) {
      return;
    }
    // The whole desk has all else in it.
    const next = asked.again.has('#desk') ? '#desk' : asked.again.keys().next().value;
    const within = next === '#desk' ? [...asked.again] : [[next, asked.again.get(next)]];
    within.forEach(([one]) => asked.again.delete(one));
    asked.busy = true;
    const pressed = asked.pressed;
    const answer = await part(address(NEWS[next]));
    asked.busy = false;
    if (pressed !== asked.pressed || !mayAsk()) {
      within.forEach(([one, until]) => later(one, until));
    } else if (answer) {
      swap(answer.ok ? next : '#notice', answer.text);
    }
    askAgain();
  }

  /** A part of the page from the server, or null where it does not answer. */
  async function part(path) {
    try {
      const answer = await fetch(path, { headers: { 'HX-Request': 'true' } });
      return { ok: answer.ok, text: await answer.text() };
    } catch (e) {
      lost(0);
      return null;
    }
  }

  function swap(target, text) {
    if (!document.querySelector(target)) {
      return;
    }
    leave(document.querySelector(target), true);
    htmx.swap(target, text, { swapStyle: target === '#notice' ? 'innerHTML' : 'outerHTML', swapDelay: 0, settleDelay: 20 });
  }

  /** What a coach has pressed is waited for; nothing that the page asks for by itself takes its place meanwhile. */
  document.addEventListener('htmx:beforeRequest', (event) => {
    if (event.detail.requestConfig.verb !== 'get') {
      // What was asked of a start is asked of a week that is about to change.
      saying++;
      question.abort();
      asked.pressed++;
      asked.awaited.add(event.detail.xhr);
    }
  });
  document.addEventListener('htmx:afterRequest', (event) => {
    if (asked.awaited.delete(event.detail.xhr)) {
      askAgain();
    }
  });

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
    line.addEventListener('open', found);
    line.addEventListener('error', () => {
      line.close();
      line = null;
      lost(QUIET_WHILE);
      setTimeout(listen, TRY_AGAIN);
    });
    line.addEventListener('could-go', () => ask('#could-go'));
    // What the page was drawn with is no news: whoever chooses in it must not lose the choice.
    const hear = (name, target) => line.addEventListener(name, (event) => ask(target, Number(event.data)));
    hear('revision', '#desk');
    hear('search', '#search');
  }

  /** Says that the program does not answer, unless it does again in a moment. */
  const QUIET_WHILE = 1500;
  const TRY_AGAIN = 2000;
  let losing = null;
  function lost(after) {
    const box = document.getElementById('lost');
    losing = losing || (box && setTimeout(() => { box.hidden = false; }, after));
  }

  /** The program answers again: what happened meanwhile is asked for. */
  function found() {
    clearTimeout(losing);
    losing = null;
    if (!document.getElementById('lost').hidden) {
      document.getElementById('lost').hidden = true;
      ask('#desk');
    }
  }

  /** Asks the server and puts the answer where it belongs; whether it answers is said elsewhere. */
  const send = (verb, path, how) => htmx.ajax(verb, path, how).catch(() => lost(0));

  /* ---- what is told ---- */

  /** What there is to tell of the page; while a search is on only that it is. */
  const tellings = () => ['#saved', '#notice .news', '#search[aria-busy="true"] .progress b',
    '#search[aria-busy="false"] .progress', '#could-go[aria-busy="true"] b', '#could-go .answer'].map((selector) => all(selector).map((one) => one.textContent).join(' '));

  /** Tells what is new in a place that stays while all round it is drawn anew: only there it is read out. */
  let toldBefore = tellings();
  function tell() {
    const now = tellings();
    const fresh = now.filter((text, i) => text !== '' && text !== toldBefore[i]);
    toldBefore = now;
    if (fresh.length > 0 && document.getElementById('told')) {
      document.getElementById('told').textContent = fresh.join(' ');
    }
  }

  /* ---- a session in the hand ---- */

  let saying = 0;
  const held = { session: null, lane: '', asked: 0, again: null, refocus: null };
  const hand = () => document.getElementById('hold');
  const cells = () => all('.cell');

  /** Takes a session into the hand: the starts of a place and a dose appear in its lane, or in the one of its card. */
  async function hold(session, layer, focus, card) {
    if (desk().querySelector('#land[inert]')) {
      return;
    }
    const number = ++held.asked;
    const values = { session, revision: desk().dataset.revision };
    if (layer !== undefined) {
      values.layer = layer;
    }
    const hours = card && card.closest('.hours');
    held.lane = hours ? hours.dataset.lane : held.session === session ? held.lane : '';
    values.lane = held.lane;
    held.session = session;
    await send('GET', address('/hold', values), { target: '#hold', swap: 'innerHTML' });
    if (number !== held.asked || held.session !== session) {
      return;
    }
    spread(session, focus);
  }

  /** Lays the starts that have come into the days of the lane. */
  function spread(session, focus) {
    clear();
    const page = hand().querySelector('.hold');
    if (!page) {
      held.session = null;
      return;
    }
    all('.hold-cells > .cells', hand()).forEach((day) => {
      const hours = desk().querySelector(
        '.day[data-date="' + day.dataset.date + '"] .hours[data-lane="' + page.dataset.lane + '"]');
      if (hours) {
        hours.appendChild(day);
        hours.closest('.lane').classList.add('holding');
      }
    });
    all('.card').filter((card) => card.dataset.id === session).forEach((card) => card.classList.add('in-hand'));
    const again = held.refocus && hand().querySelector(held.refocus);
    held.refocus = null;
    if (again) {
      again.focus({ preventScroll: true });
    }
    const first = desk().querySelector('.cell.here') || desk().querySelector('.cell.better')
      || desk().querySelector('.cell:not(.no)') || desk().querySelector('.cell');
    if (first) {
      first.tabIndex = 0;
      if (focus) {
        first.focus();
      }
    } else if (focus) {
      (hand().querySelector('a.go') || document.getElementById('put-back')).focus();
    }
  }

  function clear() {
    saying++;
    all('.hours .cells').forEach((day) => day.remove());
    all('.holding').forEach((lane) => lane.classList.remove('holding'));
    all('.in-hand').forEach((card) => card.classList.remove('in-hand'));
  }

  /** Puts the session back where it was. */
  function putBack() {
    const session = held.session;
    held.session = null;
    held.asked++;
    clear();
    hand().replaceChildren();
    const card = all('[data-hold]').find((one) => one.dataset.hold === session);
    if (card) {
      card.focus();
    }
    askAgain();
  }

  /** Says what a start would do: at once in short, then in full. */
  function say(cell) {
    const page = hand().querySelector('.hold');
    const says = document.getElementById('hold-says');
    if (!page || !says) {
      return;
    }
    const number = ++saying;
    const day = cell.closest('.cells').getAttribute('aria-label');
    says.textContent = day + ' ' + cell.querySelector('.unseen').textContent + '.';
    setTimeout(async () => {
      if (number !== saying) {
        return;
      }
      const full = await sentence(page, cell);
      if (number === saying && full) {
        says.textContent = day + ' ' + cell.dataset.start.slice(11, 16) + '. ' + full;
      }
    }, 150);
  }

  let question = new AbortController();
  async function sentence(page, cell) {
    question = new AbortController();
    const answer = await fetch(address('/hold/say', {
      session: page.dataset.session,
      revision: page.dataset.revision,
      start: cell.dataset.start,
      facility: page.dataset.facility,
      dose: page.dataset.dose,
    }), { signal: question.signal }).catch(() => null);
    return answer && answer.ok ? answer.text() : '';
  }

  /** Puts the session at a start; where that breaks what must hold, only after a plain warning. */
  async function drop(cell) {
    const page = hand().querySelector('.hold');
    if (!page) {
      return;
    }
    if (cell.classList.contains('here')) {
      putBack();
      return;
    }
    if (cell.classList.contains('no') && !(await warned(page, cell))) {
      cell.focus();
      return;
    }
    const values = {
      session: page.dataset.session,
      start: cell.dataset.start,
      facility: page.dataset.facility,
      dose: page.dataset.dose,
      revision: page.dataset.revision,
      look: desk().dataset.look,
    };
    const session = held.session;
    held.session = null;
    saying++;
    await send('POST', desk().dataset.base + '/move', { target: '#desk', swap: 'outerHTML', values });
    clear();
    const card = all('.card').find((one) => one.dataset.id === session);
    if (card) {
      card.focus();
    }
    askAgain();
  }

  async function warned(page, cell) {
    const dialog = document.getElementById('warn');
    document.getElementById('warn-says').textContent = (await sentence(page, cell)) || cell.textContent;
    return new Promise((answer) => {
      dialog.addEventListener('close', () => answer(dialog.returnValue === 'yes'), { once: true });
      document.getElementById('warn-yes').onclick = () => dialog.close('yes');
      document.getElementById('warn-no').onclick = () => dialog.close('no');
      dialog.returnValue = '';
      dialog.showModal();
    });
  }

  /** Goes from start to start: up and down inside a day, left and right from day to day. */
  function step(cell, key) {
    const day = cell.closest('.cells');
    const own = all('.cell', day);
    const at = own.indexOf(cell);
    const days = all('.hours .cells');
    const rank = days.indexOf(day);
    const beside = days[rank + (key === 'ArrowLeft' ? -1 : 1)];
    const clock = cell.dataset.start.slice(11);
    const to = {
      ArrowUp: () => own[at - 1],
      ArrowDown: () => own[at + 1],
      Home: () => own[0],
      End: () => own[own.length - 1],
      ArrowLeft: () => beside && nearest(beside, clock),
      ArrowRight: () => beside && nearest(beside, clock),
    }[key]();
    if (to) {
      cell.tabIndex = -1;
      to.tabIndex = 0;
      to.focus();
    }
  }

  const minutes = (clock) => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5));
  function nearest(day, clock) {
    return all('.cell', day).reduce((best, cell) => {
      const far = (one) => Math.abs(minutes(one.dataset.start.slice(11)) - minutes(clock));
      return best === null || far(cell) < far(best) ? cell : best;
    }, null);
  }

  function otherLayer(way) {
    const layers = all('.layer');
    const now = layers.findIndex((layer) => layer.getAttribute('aria-pressed') === 'true');
    const next = layers[(now + way + layers.length) % layers.length];
    if (next && layers.length > 1) {
      hold(held.session, next.dataset.layer, true);
    }
  }

  /* ---- dragging ---- */

  /** A finger scrolls the page unless it begins on the session that is in the hand already. */
  const mayDrag = (card, event) => event.button === 0
    && (event.pointerType !== 'touch' || card.classList.contains('in-hand'));

  const drag = { session: null, x: 0, y: 0, ghost: null, over: null, done: false };
  function move(event) {
    if (!drag.session) {
      return;
    }
    if (!drag.ghost) {
      if (Math.hypot(event.clientX - drag.x, event.clientY - drag.y) < 6) {
        return;
      }
      drag.ghost = document.createElement('div');
      drag.ghost.className = 'ghost';
      drag.ghost.setAttribute('aria-hidden', 'true');
      drag.ghost.textContent = drag.label;
      document.body.appendChild(drag.ghost);
      if (held.session !== drag.session) {
        hold(drag.session, undefined, false, drag.card);
      }
    }
    drag.ghost.style.transform = 'translate(' + (event.clientX + 14) + 'px,' + (event.clientY + 10) + 'px)';
    const under = document.elementFromPoint(event.clientX, event.clientY);
    const cell = under && under.closest('.cell');
    if (cell && cell !== drag.over) {
      say(cell);
    }
    drag.over = cell;
    if (cell) {
      drag.ghost.textContent = cell.dataset.start.slice(11, 16) + ' ' + cell.querySelector('span').textContent;
    }
  }

  function end() {
    const over = drag.over;
    const dragged = drag.ghost !== null;
    if (drag.ghost) {
      drag.ghost.remove();
    }
    drag.session = null;
    drag.ghost = null;
    drag.over = null;
    drag.done = dragged;
    setTimeout(() => { drag.done = false; }, 0);
    if (dragged && over && over.isConnected) {
      drop(over);
    }
  }

  /* ---- what a coach does ---- */

  document.addEventListener('pointerdown', (event) => {
    const card = event.target.closest('.card[data-hold]');
    if (card && mayDrag(card, event)) {
      drag.session = card.dataset.hold;
      drag.card = card;
      drag.label = card.querySelector('.label').textContent;
      drag.x = event.clientX;
      drag.y = event.clientY;
    }
  });
  document.addEventListener('pointermove', move);
  document.addEventListener('pointerup', end);
  document.addEventListener('pointercancel', end);

  document.addEventListener('click', (event) => {
    if (drag.done) {
      return;
    }
    const on = (selector) => event.target.closest(selector);
    if (on('button.what')) {
      light(on('button.what'));
    } else if (on('.cell')) {
      drop(on('.cell'));
    } else if (on('.layer')) {
      held.refocus = '.layer[data-layer="' + on('.layer').dataset.layer + '"]';
      hold(held.session, on('.layer').dataset.layer, false);
    } else if (on('#put-back')) {
      putBack();
    } else if (on('[data-hold]')) {
      const session = on('[data-hold]').dataset.hold;
      // A click by key has no place on the screen.
      if (held.session === session) {
        putBack();
      } else {
        hold(session, undefined, event.detail === 0, on('.card'));
      }
    }
  });

  document.addEventListener('keydown', (event) => {
    if (!held.session || document.querySelector('dialog[open]')) {
      return;
    }
    const cell = event.target.closest('.cell');
    const steps = ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Home', 'End'];
    if (event.key === 'Escape') {
      putBack();
    } else if (cell && steps.includes(event.key)) {
      event.preventDefault();
      step(cell, event.key);
    } else if (cell && (event.key === 'PageUp' || event.key === 'PageDown')) {
      event.preventDefault();
      otherLayer(event.key === 'PageUp' ? -1 : 1);
    }
  });

  document.addEventListener('focusin', (event) => {
    const cell = event.target.closest('.cell');
    if (cell) {
      say(cell);
    }
  });
  document.addEventListener('pointerover', (event) => {
    const cell = event.target.closest('.cell');
    if (cell && !drag.session) {
      say(cell);
    }
  });

  /** After a pin the week is drawn anew and the session stays in the hand; what a coach was told stays until the next change. */
  let told = null;
  /** Ids of the parts that are drawn anew with the focus in them, until they are there again. */
  const unfocused = new Set();
  function leave(target, asking) {
    if (desk() && target.id && target.contains(document.activeElement)) {
      unfocused.add(target.id);
    }
    if (target.id !== 'desk') {
      return;
    }
    told = asking ? document.querySelector('#notice > .notice') : null;
    const pin = document.activeElement.closest('.pins .button');
    held.refocus = pin ? '.' + Array.from(pin.classList).find((name) => name.startsWith('pin-')) : null;
    if (held.session) {
      held.again = held.session;
      held.session = null;
    }
  }
  document.addEventListener('htmx:beforeSwap', (event) => {
    if (event.detail.xhr.status >= 400) {
      event.detail.swapOverride = 'innerHTML';
    }
    if (event.detail.target) {
      leave(event.detail.target, event.detail.requestConfig.verb === 'get');
    }
  });
  document.addEventListener('htmx:sendError', () => lost(0));
  document.addEventListener('htmx:afterSettle', (event) => {
    tell();
    const notice = document.getElementById('notice');
    if (told && notice && !told.isConnected) {
      notice.appendChild(told);
    }
    told = null;
    const session = held.again;
    const part = [...unfocused].map((id) => document.getElementById(id)).find((one) => one && one.contains(event.target));
    held.again = null;
    if (part) {
      unfocused.delete(part.id);
    }
    if (session && hand()) {
      hold(session);
    } else if (part && document.activeElement === document.body) {
      // What was pressed is gone; whoever uses the keyboard goes on from what is there now, or from what was done.
      const next = part.id === 'desk' ? null : part.querySelector('.answer, .button');
      (next || document.getElementById('saved')).focus({ preventScroll: true });
    }
  });

  document.addEventListener('visibilitychange', listen);
  window.addEventListener('pagehide', () => line && line.close());
  listen();

  /** A session that was taken up in another view is held on arriving. */
  const arriving = new URLSearchParams(location.search);
  if (desk() && arriving.has('hold')) {
    const session = arriving.get('hold');
    arriving.delete('hold');
    history.replaceState(null, '', location.pathname + '?' + arriving);
    hold(session, undefined, true);
  }

  /** A first guess at the clocks that are meant: those of this machine. */
  all('[data-own-zone]').forEach((field) => {
    if (field.value === '') {
      field.value = Intl.DateTimeFormat().resolvedOptions().timeZone || '';
    }
  });
})();
