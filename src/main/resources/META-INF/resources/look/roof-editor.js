/* Changes a roof plan by dragging and by keys. The form stays the truth: the drawing follows it, and it is what is sent. */
const form = document.getElementById('plan-form');
const pieces = document.getElementById('pieces');
const svg = document.querySelector('.editing .roof-plan');
const shapes = svg.querySelector('.shapes');
const back = document.getElementById('step-back');
const LENGTH = Number(form.dataset.length) * 100;
const LINES = form.dataset.lines.split(' ');
const THINNEST = 4, LARGE = 45;
const past = [];
let chosen = null;

const field = (row, name) => row.querySelector(`[name=${name}]`);
const number = (input) => Number(input.value.replace(',', '.'));
const cm = (row, name) => (number(field(row, name)) || 0) * 100;
const width = () => (number(form.elements.width) || 0) * 100 || Number(svg.dataset.across);
const node = (tag, attributes) => {
  const made = document.createElementNS('http://www.w3.org/2000/svg', tag);
  Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
  return made;
};

/* --- undo: what the form held before each change */
const NAMES = ['id', 'name', 'type', 'front', 'left', 'along', 'across'];
const held = () => ({ width: form.elements.width.value, rows: [...pieces.children].map((row) => NAMES.map((name) => field(row, name).value)) });
function remember(before) {
  past.push(before);
  back.disabled = false;
}
function stepBack() {
  const before = past.pop();
  if (!before) return;
  form.elements.width.value = before.width;
  pieces.replaceChildren();
  before.rows.forEach((values) => addRow(values));
  back.disabled = past.length === 0;
  draw();
}

/* --- the list */
function addRow(values) {
  const row = document.getElementById('piece').content.firstElementChild.cloneNode(true);
  const place = 'n' + Math.random().toString(36).slice(2);
  row.querySelectorAll('[id]').forEach((part) => { part.id = part.id.replace('new', place); });
  row.querySelectorAll('[for]').forEach((part) => { part.htmlFor = part.htmlFor.replace('new', place); });
  NAMES.forEach((name, index) => { field(row, name).value = values[index]; });
  pieces.append(row);
  return row;
}
function freeId() {
  const used = [...pieces.children].map((row) => field(row, 'id').value);
  let next = used.length + 1;
  while (used.includes('o' + next)) next++;
  return 'o' + next;
}
function removeRow(row) {
  remember(held());
  row.remove();
  draw();
  back.focus();
}
function choose(row, open) {
  chosen = row;
  if (open) row.querySelector('details').open = true;
  shapes.querySelectorAll('.shape').forEach((shape) => shape.classList.toggle('chosen', shape.dataset.id === field(row, 'id').value));
}

/* --- the drawing */
function draw() {
  const across = width();
  const focused = document.activeElement?.dataset?.id;
  svg.querySelector('.outline').setAttribute('width', across);
  svg.setAttribute('viewBox', `-14 -22 ${across + 28} ${LENGTH + 44}`);
  svg.querySelector('.grid').setAttribute('d', `M${across / 3} 0V${LENGTH} M${across * 2 / 3} 0V${LENGTH} M0 ${LENGTH / 3}H${across} M0 ${LENGTH * 2 / 3}H${across}`);
  shapes.replaceChildren(...[...pieces.children].sort((one, other) => area(other) - area(one)).map(shapeOf));
  [...pieces.children].forEach((row) => {
    row.querySelector('.called').textContent = field(row, 'name').value;
    row.querySelector('legend').textContent = field(row, 'name').value;
    row.querySelector('.kind-of').textContent = field(row, 'type').value.replace('-', ' ');
  });
  if (chosen?.isConnected) choose(chosen, false);
  if (focused) shapes.querySelector(`[data-id="${CSS.escape(focused)}"]`)?.focus();
}
const area = (row) => cm(row, 'along') * cm(row, 'across');
function shapeOf(row) {
  const type = field(row, 'type').value;
  const wide = Math.max(THINNEST, cm(row, 'across'));
  const high = Math.max(THINNEST, cm(row, 'along'));
  const line = LINES.includes(type);
  const group = node('g', { class: `shape ${type}${line ? ' line' : ''}`, tabindex: 0, role: 'button', 'data-id': field(row, 'id').value });
  group.setAttribute('aria-label', `${field(row, 'name').value}, ${field(row, 'front').value} m from the front, ${field(row, 'left').value} m from the left`);
  group.append(node('rect', { x: cm(row, 'left') - wide / 2, y: cm(row, 'front') - high / 2, width: wide, height: high, rx: 3 }));
  if (!line) {
    const name = node('text', { x: cm(row, 'left'), y: high > LARGE ? cm(row, 'front') + 3 : cm(row, 'front') + high / 2 + 9 });
    name.textContent = field(row, 'name').value;
    group.append(name);
  }
  return group;
}
const rowOf = (shape) => [...pieces.children].find((row) => field(row, 'id').value === shape.dataset.id);

/* --- moving: a thing stays on the roof whole */
function moveTo(row, front, left) {
  const keep = (value, size, roof) => Math.min(roof - size / 2, Math.max(size / 2, value));
  field(row, 'front').value = (keep(front, cm(row, 'along'), LENGTH) / 100).toFixed(2);
  field(row, 'left').value = (keep(left, cm(row, 'across'), width()) / 100).toFixed(2);
  draw();
}
shapes.addEventListener('pointerdown', (event) => {
  const shape = event.target.closest('.shape');
  if (!shape) return;
  event.preventDefault();
  const row = rowOf(shape);
  const before = held();
  const at = (point) => new DOMPoint(point.clientX, point.clientY).matrixTransform(svg.getScreenCTM().inverse());
  const start = at(event);
  const from = { front: cm(row, 'front'), left: cm(row, 'left') };
  let moved = false;
  choose(row, true);
  const move = (next) => {
    const now = at(next);
    moved = true;
    moveTo(row, from.front + now.y - start.y, from.left + now.x - start.x);
  };
  const end = () => {
    window.removeEventListener('pointermove', move);
    window.removeEventListener('pointerup', end);
    window.removeEventListener('pointercancel', end);
    if (moved) remember(before);
    shapes.querySelector(`[data-id="${CSS.escape(field(row, 'id').value)}"]`).focus({ preventScroll: true });
  };
  window.addEventListener('pointermove', move);
  window.addEventListener('pointerup', end);
  window.addEventListener('pointercancel', end);
});
const WAYS = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] };
shapes.addEventListener('keydown', (event) => {
  const row = rowOf(event.target.closest('.shape'));
  const way = WAYS[event.key];
  if (way) {
    event.preventDefault();
    const step = event.shiftKey ? 1 : 5;
    remember(held());
    moveTo(row, cm(row, 'front') + way[0] * step, cm(row, 'left') + way[1] * step);
  } else if (event.key === 'Delete') {
    removeRow(row);
  } else if (event.key === 'Enter' || event.key === ' ') {
    event.preventDefault();
    choose(row, true);
    field(row, 'name').focus();
  }
});
shapes.addEventListener('focusin', (event) => choose(rowOf(event.target.closest('.shape')), false));

/* --- the form's own ways */
let beforeTyping = null;
form.addEventListener('focusin', () => { beforeTyping = held(); });
form.addEventListener('change', () => {
  if (beforeTyping) remember(beforeTyping);
  beforeTyping = held();
  draw();
});
form.addEventListener('click', (event) => {
  const button = event.target.closest('button[name=act]');
  if (!button || button.value === 'save') return;
  event.preventDefault();
  if (button.value !== 'add') return removeRow(button.closest('li'));
  remember(held());
  const type = form.elements.addType.value;
  const row = addRow([freeId(), type.replace('-', ' '), type, (LENGTH / 200).toFixed(2), (width() / 200).toFixed(2), '0.4', '0.4']);
  draw();
  choose(row, true);
  field(row, 'name').focus();
});
back.addEventListener('click', stepBack);
document.addEventListener('keydown', (event) => {
  if (event.key === 'z' && (event.ctrlKey || event.metaKey) && !event.target.closest('input, select')) { event.preventDefault(); stepBack(); }
});
draw();
