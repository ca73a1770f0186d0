/* The due list by keyboard, many rows at once, and ten seconds to think better of it. */
const UNDO_SECONDS = 10;
function rows() { return [...document.querySelectorAll('tr[data-task]')]; }
function many() { return document.getElementById('many'); }

/* Rows: one of them is in the tab order; the keys work only while a row has the focus. */
function oneInTabOrder() {
  const all = rows();
  const current = all.find((row) => row.tabIndex === 0 && row.hasAttribute('tabindex')) || all[0];
  all.forEach((row) => { row.tabIndex = row === current ? 0 : -1; });
}
oneInTabOrder();
function goTo(row) {
  if (!row) return;
  rows().forEach((other) => { other.tabIndex = -1; });
  row.tabIndex = 0;
  row.focus();
  row.scrollIntoView({ block: 'nearest' });
}
function open(row, field) {
  const act = row.querySelector('details.act');
  const target = act && act.querySelector(field);
  if (!target) return;
  act.open = true;
  target.focus();
}
const moves = {
  ArrowDown: (row) => goTo(rows()[rows().indexOf(row) + 1]),
  ArrowUp: (row) => goTo(rows()[rows().indexOf(row) - 1]),
  x: (row) => row.querySelector('.pick input').click(),
  a: (row) => open(row, 'select'),
  c: (row) => open(row, 'input[name=why]'),
  Enter: (row) => { location.href = row.dataset.task; },
};
document.addEventListener('keydown', (event) => {
  if (!event.target.matches('tr[data-task]') || event.ctrlKey || event.metaKey || event.altKey) return;
  const move = moves[event.key.length === 1 ? event.key.toLowerCase() : event.key];
  if (!move) return;
  event.preventDefault();
  move(event.target);
});

/* Many rows. */
function chosen() {
  return rows().filter((row) => row.querySelector('.pick input').checked);
}
function tellChosen() {
  if (!many()) return;
  const number = chosen().length;
  many().querySelector('.chosen').textContent = number === 0 ? 'No row chosen' : number === 1 ? '1 row chosen' : number + ' rows chosen';
  many().classList.toggle('ready', number > 0);
}
document.addEventListener('change', (event) => { if (event.target.matches('.pick input')) tellChosen(); });
tellChosen();
document.addEventListener('lapwing:updated', () => { oneInTabOrder(); tellChosen(); });

/* Undo: the request is held back for a while, and goes at once when the page is left. */
let waiting = null;
const bar = Object.assign(document.createElement('div'), { className: 'undo', hidden: true });
const words = document.createElement('span');
words.setAttribute('role', 'status');
const undo = Object.assign(document.createElement('button'), { type: 'button', className: 'btn btn-plain', textContent: 'Undo' });
bar.append(words, undo);
document.querySelector('main').append(bar);

function send(request, keepalive) {
  return fetch(request.action, { method: 'POST', body: request.body, redirect: 'manual', keepalive });
}
function release(keepalive) {
  if (!waiting) return null;
  const request = waiting;
  waiting = null;
  clearTimeout(request.timer);
  return send(request, keepalive);
}
undo.addEventListener('click', () => {
  clearTimeout(waiting.timer);
  waiting.rows.forEach((row) => row.classList.remove('pending'));
  const back = waiting.back;
  waiting = null;
  bar.hidden = true;
  (back || document.querySelector('main')).focus();
});
window.addEventListener('pagehide', () => { release(true); });

document.addEventListener('submit', async (event) => {
  const form = event.target;
  if (!form.dataset.undo) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  const held = form === many() ? chosen() : [form.closest('tr, li')].filter(Boolean);
  if (form === many() && held.length === 0) return;
  await release(false);
  const body = new URLSearchParams(new FormData(form, event.submitter));
  const what = form === many() ? held.length + (held.length === 1 ? ' row' : ' rows') : form.dataset.undo;
  const off = body.has('why') && event.submitter.classList.contains('btn-grave');
  const tech = form.querySelector('select[name=tech]');
  held.forEach((row) => row.classList.add('pending'));
  const details = form.closest('details.act');
  if (details) details.open = false;
  words.textContent = what + (off ? ' will be called off' : ' will be given to ' + tech.selectedOptions[0].text) + ' in ' + UNDO_SECONDS + ' seconds.';
  bar.hidden = false;
  waiting = { action: form.action, body, rows: held, back: rows().find((row) => held.includes(row)) };
  waiting.timer = setTimeout(async () => { await release(false); location.reload(); }, UNDO_SECONDS * 1000);
  undo.focus();
}, true);
