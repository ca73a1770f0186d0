/* The roof plan of the return form: a tap makes a mark, each with its kind and a way to take it back. */
const plan = document.getElementById('plan');
const list = document.getElementById('marks');
const kinds = plan.closest('fieldset').dataset.kinds.split('|');
const LEFT = 10, TOP = 24, WIDTH = 580, HEIGHT = 172;
const thirds = [['front', 'middle', 'rear'], ['left', 'centre', 'right']];
const third = (share) => Math.min(2, Math.floor(share * 3));
const name = (x, y) => thirds[0][third(x)] + ' ' + thirds[1][third(y)];
const svg = (tag, attributes, text) => {
  const node = document.createElementNS('http://www.w3.org/2000/svg', tag);
  Object.entries(attributes).forEach(([key, value]) => node.setAttribute(key, value));
  if (text) node.textContent = text;
  return node;
};

function draw() {
  plan.querySelectorAll('.dot, .dot-label').forEach((node) => node.remove());
  [...list.children].forEach((item, index) => {
    const [x, y] = item.querySelector('[name=markAt]').value.split(',').map(Number);
    const at = { x: LEFT + x * WIDTH, y: TOP + (1 - y) * HEIGHT };
    plan.append(svg('circle', { class: 'dot', cx: at.x, cy: at.y, r: 12 }));
    plan.append(svg('text', { class: 'dot-label', x: at.x, y: at.y + 5 }, String(index + 1)));
    item.querySelector('.place').textContent = (index + 1) + ': ' + name(x, y);
  });
}

function dress(item) {
  const place = document.createElement('span');
  place.className = 'place';
  if (!item.querySelector('.place')) {
    item.childNodes.forEach((node) => { if (node.nodeType === Node.TEXT_NODE) node.remove(); });
    item.prepend(place);
  }
  const away = document.createElement('button');
  away.type = 'button';
  away.className = 'btn btn-plain';
  away.textContent = 'Take away';
  away.addEventListener('click', () => { item.remove(); draw(); plan.scrollIntoView({ block: 'nearest' }); });
  item.append(away);
}

function add(x, y, kind) {
  const item = document.createElement('li');
  const at = Object.assign(document.createElement('input'), { type: 'hidden', name: 'markAt' });
  at.value = x.toFixed(3) + ',' + y.toFixed(3);
  const choice = document.createElement('select');
  choice.name = 'markKind';
  choice.className = 'form-select w-auto';
  choice.setAttribute('aria-label', 'What is there');
  kinds.forEach((word) => choice.append(new Option(word, word, false, word === kind)));
  item.append(at, choice);
  list.append(item);
  dress(item);
  draw();
}

plan.addEventListener('click', (event) => {
  const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(plan.getScreenCTM().inverse());
  const x = (point.x - LEFT) / WIDTH;
  const y = 1 - (point.y - TOP) / HEIGHT; // seen from above, the left side is the lower one
  if (x >= 0 && x <= 1 && y >= 0 && y <= 1) add(x, y, kinds[0]);
});

document.getElementById('add-mark').addEventListener('click', () => {
  const place = document.getElementById('place');
  const kind = document.getElementById('placeKind');
  const index = place.selectedIndex;
  add((Math.floor(index / 3) + 0.5) / 3, (index % 3 + 0.5) / 3, kind.value || kinds[0]);
  kind.value = '';
});

[...list.children].forEach(dress);
draw();
