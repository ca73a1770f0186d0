/* The sheet with a script: entries are kept on the phone and sent when there is signal. Without it the forms of the
   page are sent one by one. */
import { Plan } from './sheet-plan.js';
import { Queue } from './sheet-queue.js';
import { Drafts } from './sheet-drafts.js';
import { Found } from './sheet-found.js';
import { Rail } from './sheet-rail.js';
import { Parts } from './sheet-parts.js';

const LOOK_AGAIN = 15000;
const { task, person } = document.body.dataset;
const byId = (id) => document.getElementById(id);
const here = location.pathname;

const queue = new Queue(task, person, { changed: () => render(), answered: (answer, entry) => {
  take(answer.state);
  stale = stale || entry.path.startsWith('/');
  freshen();
} });
const plan = new Plan(byId('roof'));
const drafts = new Drafts(queue);
const rail = new Rail();
const parts = new Parts(queue, drafts);
let stale = false;
let state = JSON.parse(document.body.dataset.state);
const earlier = queue.recall('state');
if (earlier && earlier.asOf > state.asOf) state = earlier;

/* What others entered is new until it was looked at; what was there at the first look is on the page. */
let seen = new Set(queue.recall('seen') || marks(state));
function marks(of) {
  return [...of.findings.map((found) => found.id), ...of.takenBack.map((gone) => gone.words)];
}
function keepSeen() { queue.keep('seen', [...seen]); }
keepSeen();

const found = new Found({ queue, plan, drafts, state: () => state, rerender: () => render() });

function take(next) {
  if (next.asOf < state.asOf) return;
  [...next.findings, ...next.takenBack].filter((entry) => entry.mine).forEach((entry) => seen.add(entry.id || entry.words));
  state = next;
  queue.keep('state', state);
  keepSeen();
  render();
}

/* Shows the parts anew once all has arrived and nobody is typing. The link of a mail opens a signed sheet no more: what is
   shown of that one stays. */
function freshen() {
  const typing = document.activeElement.matches('textarea, input:not([type=checkbox], [type=radio])');
  if (stale && !typing && !state.signed && queue.list().length === 0) location.reload();
}
document.addEventListener('focusout', () => setTimeout(freshen));

const pending = (path) => queue.list().filter((entry) => entry.path === path);
const show = (node, shown) => { if (node) node.hidden = !shown; };

function render() {
  const read = state.read || pending('cautions').length > 0;
  const started = state.started || Boolean(state.signed) || pending('start').length > 0;
  if (state.mayFill) {
    show(byId('cautions-form'), !read);
    show(byId('cautions-read'), read);
    show(byId('work'), read);
    show(byId('start-form'), !started);
    show(byId('begun'), started);
  }
  byId('closed').textContent = state.closedBecause || '';
  show(byId('closed'), Boolean(state.closedBecause) && !state.signed);
  document.body.classList.toggle('closed', !state.mayFill);
  found.render();
  parts.render();
  rail.render({ read, started, found: found.standing().length, signed: Boolean(state.signed) });
  renderOthers();
  renderKept();
  renderRefused();
  renderSigned();
}

function unseen() {
  return [
    ...state.findings.filter((entry) => !entry.mine && !seen.has(entry.id)).map((entry) => entry.who + ' added: ' + entry.words),
    ...state.takenBack.filter((entry) => !entry.mine && !seen.has(entry.words)).map((entry) => entry.words),
  ];
}

function renderOthers() {
  const lines = unseen();
  const box = byId('others');
  show(box, lines.length > 0);
  if (box.dataset.lines === lines.join('\n')) return;
  box.dataset.lines = lines.join('\n');
  const done = button('Seen', () => { marks(state).forEach((mark) => seen.add(mark)); keepSeen(); render(); });
  box.replaceChildren(...lines.map((line) => paragraph(line)), done);
}

function renderKept() {
  const entries = queue.list();
  const count = entries.length === 1 ? '1 entry' : entries.length + ' entries';
  const notTaken = entries.some((entry) => entry.refused);
  const words = entries.length === 0 ? 'All saved'
    : notTaken ? 'Not taken: see above'
    : queue.stranger ? 'Sign in to send ' + count
    : queue.sending && queue.failures === 0 ? 'Sending ' + count
    : count + (entries.length === 1 ? ' waits' : ' wait') + ' for signal';
  const kept = byId('kept');
  if (kept.textContent !== words) kept.textContent = words;
  kept.className = 'kept ' + (entries.length === 0 ? 'all' : notTaken ? 'not' : 'some');
}

/* An entry that was not taken, and what can be done about it. */
function renderRefused() {
  const entry = queue.list().find((other) => other.refused);
  const box = byId('refused');
  const mark = entry ? entry.key + entry.refused : queue.stranger ? 'stranger' : queue.unkept.length ? 'full' : '';
  if ((box.dataset.mark || '') === mark) return;
  box.dataset.mark = mark;
  show(box, mark !== '');
  if (entry) {
    const ways = entry.path === 'sign-off' ? [] : [button('Try again', () => queue.retry(entry))];
    ways.push(button(entry.path === 'sign-off' ? 'Sign again' : 'Discard it', () => discardRefused(entry)));
    box.replaceChildren(paragraph('Not taken: ' + entry.words + '. ' + entry.refused), ...ways);
    box.scrollIntoView({ block: 'center' });
    look();
  } else if (mark === 'stranger') {
    const link = Object.assign(document.createElement('a'), { href: '/sign-in?next=' + here, textContent: 'Sign in', className: 'btn btn-main btn-big' });
    box.replaceChildren(paragraph('You are signed out, or the link has ended. What you entered stays on this phone.'), link);
  } else if (mark === 'full') {
    box.replaceChildren(paragraph('This phone has no room to keep entries. Stay on this page until all is saved.'));
  }
}

/* A signature rests on all entries before it: without one of them it has to be given anew. */
function discardRefused(entry) {
  queue.drop(entry);
  pending('sign-off').forEach((signature) => queue.drop(signature));
  render();
  queue.send();
}

function renderSigned() {
  const box = byId('signed');
  const waits = parts.stopped() || (pending('sign-off').length > 0 && !pending('sign-off')[0].refused);
  document.body.classList.toggle('signing', waits);
  byId('sign').querySelectorAll('button, input, textarea').forEach((field) => { field.disabled = waits; });
  if (!state.signed || box.childElementCount > 0) return;
  const { verdict, by, when, statement, reasons, followUps } = state.signed;
  const title = Object.assign(document.createElement('h2'), { textContent: 'Verdict: ' + verdict });
  const lines = reasons.length ? reasons : ['Nothing was found.'];
  box.className = 'sheet done-with';
  box.tabIndex = -1;
  box.append(title, paragraph('Signed by ' + by + ', ' + when + ': ' + statement), items(lines));
  if (followUps.length) box.append(paragraph('What follows:'), items(followUps.map((work) => work.words)));
  box.focus();
}

function paragraph(text) { return Object.assign(document.createElement('p'), { className: 'mb-1', textContent: text }); }
function button(text, act) {
  const made = Object.assign(document.createElement('button'), { type: 'button', className: 'btn btn-plain btn-big', textContent: text });
  made.addEventListener('click', act);
  return made;
}
function items(lines) {
  const list = document.createElement('ul');
  list.append(...lines.map((line) => Object.assign(document.createElement('li'), { textContent: line })));
  return list;
}
function go(id) {
  byId(id).focus({ preventScroll: true });
  byId(id).scrollIntoView();
}
function fieldsOf(form) {
  return [...new FormData(form)].filter(([name]) => name !== 'key');
}

/* What each form does instead of being sent. */
const acts = {
  cautions(form) {
    queue.add('cautions', fieldsOf(form), 'Cautions read');
    go('facts');
  },
  start(form) {
    if (form.elements.weather.value !== 'calm') return;
    queue.add('start', fieldsOf(form), 'Work started');
    go('wash');
  },
  findings(form) { found.add(form, fieldsOf(form)); },
  'sign-off'(form) {
    if (unseen().length) { go('findings'); return; }
    if (!byId('dry-now').checked) { go('dry'); return; }
    const own = queue.list().reduce((sum, entry) => sum + found.weight(entry), 0);
    const fields = fieldsOf(form).filter(([name]) => name !== 'seen');
    queue.add('sign-off', [...fields, ['seen', String(state.entries + own)]], 'Your signature');
  },
};
document.addEventListener('submit', (event) => {
  const form = event.target;
  const act = acts[form.dataset.entry] || (form.dataset.keep && ((kept, submitter) => parts.keep(kept, submitter)));
  if (!act) return;
  event.preventDefault();
  act(form, event.submitter);
}, true);

document.querySelectorAll('form.ticks').forEach((form) => form.addEventListener('submit', (event) => event.preventDefault()));
document.addEventListener('change', (event) => {
  if (event.target.name === 'weather') {
    const calm = event.target.value === 'calm';
    show(byId('start-form').querySelector('.stop'), !calm);
    byId('start-form').querySelector('.btn-main').disabled = !calm;
  }
  render();
});

/* What others do, while nothing of one's own is on its way. */
async function look() {
  if (document.hidden) return;
  try {
    const response = await fetch(here + '/state', { headers: { Accept: 'application/json' }, redirect: 'manual', cache: 'no-store' });
    if (response.ok) take(await response.json());
  } catch (noSignal) {
    /* the next look may find it again */
  }
}
setInterval(() => (queue.list().length === 0 ? look() : queue.send()), LOOK_AGAIN);

/* Without a network the page is shown as it was. */
async function keepPage() {
  if (!navigator.serviceWorker) return;
  await navigator.serviceWorker.register('/look/sheet-worker.js', { scope: here });
  const worker = await navigator.serviceWorker.ready;
  const look = performance.getEntriesByType('resource').map((entry) => new URL(entry.name))
    .filter((url) => url.origin === location.origin && /^\/(look|webjars)\//.test(url.pathname)).map((url) => url.pathname);
  const channel = new MessageChannel();
  channel.port1.onmessage = () => document.documentElement.classList.add('kept-offline');
  worker.active.postMessage({ look: [...new Set(look)] }, [channel.port2]);
}

drafts.restore();
queue.keep('state', state);
render();
queue.send();
keepPage().catch(() => document.documentElement.classList.add('online-only'));
