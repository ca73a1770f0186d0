/* The due list keeps itself up to date: it hears that something happened, asks for the page again, and takes over what
   changed. The person's place, focus, chosen rows and half-typed words stay. Runs before due.js. */
const list = document.getElementById('live');
const line = document.getElementById('live-line');
const state = document.getElementById('live-state');
const KIND_WORDS = {
  strike: 'roof struck', planned: 'new work', assigned: 'work given', accepted: 'work accepted', started: 'work started',
  done: 'work done', 'called-off': 'work called off', hold: 'on hold', release: 'hold released',
};
const QUIET_MS = 250;
const LEAST_BETWEEN_MS = 2000;
const LOOK_ANYWAY_MS = 10 * 60 * 1000;
const LONGEST_PAUSE_MS = 60 * 1000;

/* What the server sent for each part, to tell what changed from what the person did to it. */
const served = new WeakMap();
function remember(part) {
  served.set(part, part.outerHTML);
  part.querySelectorAll('[data-key]').forEach((inner) => served.set(inner, inner.outerHTML));
}
list.querySelectorAll('[data-key]').forEach(remember);

function changed(field) {
  if (!field.options) return field.value !== field.defaultValue;
  const usual = [...field.options].findIndex((option) => option.defaultSelected);
  return field.selectedIndex !== Math.max(usual, 0);
}
function mustStay(part) {
  return part.contains(document.activeElement) || part.classList.contains('pending')
    || part.querySelector('details[open]') !== null
    || [...part.querySelectorAll('input:not([type=checkbox]):not([type=hidden]), select')].some(changed);
}
function inUse(part) {
  return mustStay(part) || part.querySelector('input:checked') !== null;
}

/* Takes over what a part says, but not the fields in it. */
function rewriteAround(old, fresh) {
  const before = [...old.children];
  [...fresh.children].forEach((cell, index) => {
    const mine = before[index];
    const fields = 'input, select, summary, button';
    if (!mine || mine.matches(fields) || mine.querySelector(fields) || mine.contains(document.activeElement)) return;
    mine.replaceWith(cell);
  });
}
function keyed(parent) {
  return new Map([...parent.children].filter((child) => child.dataset.key).map((child) => [child.dataset.key, child]));
}
function update(old, fresh) {
  const now = fresh.outerHTML;
  if (served.get(old) === now) return;
  const parts = 'parts' in old.dataset;
  if (parts && 'parts' in fresh.dataset) {
    updateParts(old, fresh);
  } else if (!inUse(old)) {
    old.replaceWith(taken(fresh));
    return;
  } else if (parts || 'parts' in fresh.dataset) {
    return;
  } else {
    rewriteAround(old, fresh);
  }
  served.set(old, now);
}
function taken(fresh) {
  const mine = document.importNode(fresh, true);
  remember(mine);
  return mine;
}
function updateParts(old, fresh) {
  const mine = keyed(old);
  const theirs = keyed(fresh);
  mine.forEach((part, key) => {
    if (theirs.has(key)) return;
    if (!mustStay(part)) {
      part.remove();
    } else if (!part.classList.contains('gone')) {
      part.classList.add('gone');
      line.textContent = 'What you are working on is no longer in this list';
    }
  });
  let before = null;
  theirs.forEach((part, key) => {
    const here = mine.get(key);
    if (here) {
      here.classList.remove('gone');
      const sits = before ? before.nextElementSibling : old.firstElementChild;
      if (sits !== here && !(sits && sits.classList.contains('gone') && sits.nextElementSibling === here)) {
        moveTo(old, here, before);
      }
      update(here, part);
    } else {
      old.insertBefore(taken(part), before ? before.nextSibling : old.firstChild);
    }
    before = keyed(old).get(key);
  });
}
/* A part that moves loses the focus in it; it is given back. */
function moveTo(parent, part, before) {
  const focused = part.contains(document.activeElement) ? document.activeElement : null;
  parent.insertBefore(part, before ? before.nextSibling : parent.firstChild);
  if (focused) focused.focus({ preventScroll: true });
}

/* The row the person looks at stays where it is on the screen. */
function anchor() {
  const rows = [...list.querySelectorAll('tr[data-key], .band li[data-key]')];
  const active = rows.find((row) => row.contains(document.activeElement));
  return active || rows.find((row) => row.getBoundingClientRect().bottom > 0);
}
function keepPlace(change) {
  if (window.scrollY === 0) { change(); return; }
  const row = anchor();
  const top = row && row.getBoundingClientRect().top;
  change();
  if (row && row.isConnected) window.scrollBy(0, row.getBoundingClientRect().top - top);
}

let lastLook = Date.now();
let lookWhenShown = false;
let timer = null;
let looking = false;
function lookSoon(quiet = QUIET_MS) {
  clearTimeout(timer);
  timer = setTimeout(look, Math.max(quiet, lastLook + LEAST_BETWEEN_MS - Date.now()));
}
async function look() {
  if (document.hidden) { lookWhenShown = true; return; }
  if (looking) { lookSoon(); return; }
  looking = true;
  lastLook = Date.now();
  try {
    const answer = await fetch(location.href, { headers: { Accept: 'text/html' }, cache: 'no-store' });
    if (answer.redirected) { signedOut(); return; }
    if (!answer.ok) { lookSoon(LEAST_BETWEEN_MS * 5); return; }
    const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
    keepPlace(() => updateParts(list, page.getElementById('live')));
    document.dispatchEvent(new CustomEvent('lapwing:updated'));
  } catch (offline) {
    lookSoon(LEAST_BETWEEN_MS * 5);
  } finally {
    looking = false;
  }
}
document.addEventListener('visibilitychange', () => {
  if (document.hidden) return;
  unheard = 0;
  tellTitle();
  if (lookWhenShown) { lookWhenShown = false; lookSoon(); }
});
setInterval(() => lookSoon(), LOOK_ANYWAY_MS);

/* Sound and title for a new strike, if the person wants them. The sound is made here; browsers let a page sound only
   after the first click or key in it. */
const wish = document.getElementById('live-sound');
const title = document.title;
let unheard = 0;
let audio = null;
wish.checked = localStorage.getItem('lapwing-sound') === 'on';
wish.addEventListener('change', () => {
  localStorage.setItem('lapwing-sound', wish.checked ? 'on' : 'off');
  if (wish.checked) chime();
});
function wakeAudio() {
  if (!wish.checked) return null;
  audio = audio || new AudioContext();
  if (audio.state === 'suspended') audio.resume();
  return audio;
}
document.addEventListener('pointerdown', wakeAudio);
document.addEventListener('keydown', wakeAudio);
function chime() {
  const context = wakeAudio();
  if (!context) return;
  [[0, 660], [0.18, 880], [0.36, 660]].forEach(([after, pitch]) => {
    const tone = context.createOscillator();
    const loudness = context.createGain();
    const start = context.currentTime + after;
    tone.frequency.value = pitch;
    loudness.gain.setValueAtTime(0, start);
    loudness.gain.linearRampToValueAtTime(0.25, start + 0.02);
    loudness.gain.linearRampToValueAtTime(0, start + 0.16);
    tone.connect(loudness).connect(context.destination);
    tone.start(start);
    tone.stop(start + 0.17);
  });
  document.documentElement.dataset.chimes = Number(document.documentElement.dataset.chimes || 0) + 1;
}
function tellTitle() {
  document.title = unheard === 0 ? title : '(' + unheard + ') Roof struck · ' + title;
}
document.addEventListener('pointerdown', () => { unheard = 0; tellTitle(); });

/* Listening: one of a person's open lists of a depot holds the connection and tells the others, because browsers allow
   few connections to one server. Where the browser cannot settle who, each list has its own. */
const room = 'lapwing-live ' + list.dataset.depot;
const others = new BroadcastChannel(room);
let source = null;
let lastSeen = list.dataset.after;
let pause = 1000;
function say(words) { if (state.textContent !== words) state.textContent = words; }
function sayToAll(words) {
  say(words);
  others.postMessage({ state: words });
}
function heard(id, happened) {
  lastSeen = id;
  lookSoon();
  if (happened.kind === 'resync') return;
  line.textContent = happened.unit + ': ' + (KIND_WORDS[happened.kind] || happened.kind);
  if (happened.kind === 'strike' && wish.checked) {
    unheard++;
    tellTitle();
    chime();
  }
}
function signedOut() {
  if (source) source.close();
  say('You are signed out: load the page again to sign in.');
}
function listen() {
  source = new EventSource('/api/live?after=' + lastSeen + '&depot=' + encodeURIComponent(list.dataset.depot));
  source.onopen = () => { pause = 1000; sayToAll('Live'); };
  source.onmessage = (event) => {
    const happened = JSON.parse(event.data);
    heard(event.lastEventId, happened);
    others.postMessage({ id: event.lastEventId, happened });
  };
  source.onerror = () => {
    sayToAll('Connection lost, trying again…');
    if (source.readyState !== EventSource.CLOSED) return;
    setTimeout(listen, pause);
    pause = Math.min(pause * 2, LONGEST_PAUSE_MS);
  };
}
others.onmessage = ({ data }) => {
  if (data.hello && source) others.postMessage({ state: state.textContent });
  if (data.state && !source) say(data.state);
  if (data.happened && !source) heard(data.id, data.happened);
};
function begin() {
  if (!navigator.locks) { listen(); return; }
  navigator.locks.request(room, { ifAvailable: true }, (free) => {
    if (free) { listen(); return new Promise(() => {}); }
    others.postMessage({ hello: true });
    lookSoon();
    navigator.locks.request(room, () => { listen(); return new Promise(() => {}); });
    return null;
  });
}
window.addEventListener('pagehide', () => { if (source) source.close(); });
window.addEventListener('pageshow', (event) => { if (event.persisted) location.reload(); });
if (document.readyState === 'complete') begin(); else window.addEventListener('load', begin);
