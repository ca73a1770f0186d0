/* The drawn roof of the sheet: a tap becomes a place, and the place gets its name by the rule of the service. */
const NEAR_METRES = 0.3;
const ALONG = 1000;
/* A tap this far beside the roof, in points, is meant for its edge. */
const BESIDE = 40;
const ALONG_NAMES = ['front', 'middle', 'rear'];
const ACROSS_NAMES = ['left', 'centre', 'right'];

const third = (share) => (share < 1 / 3 ? 0 : share < 2 / 3 ? 1 : 2);
const beyond = (fromCentre, size) => Math.max(0, Math.abs(fromCentre) - size / 2);
const within = (share) => Math.min(1, Math.max(0, share));

export class Plan {
  constructor(svg) {
    this.svg = svg;
    this.length = Number(svg.dataset.length);
    this.width = Number(svg.dataset.width);
    this.across = Number(svg.dataset.across);
    this.objects = [...svg.querySelectorAll('.object')].map((node) => ({
      name: node.dataset.name,
      x: Number(node.dataset.x),
      y: Number(node.dataset.y),
      length: Number(node.dataset.length),
      width: Number(node.dataset.width),
    }));
    this.dots = svg.querySelector('#dots');
  }

  onTap(act) {
    this.svg.addEventListener('click', (event) => {
      const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(this.svg.getScreenCTM().inverse());
      if (point.x < -BESIDE || point.x > this.across + BESIDE || point.y < -BESIDE || point.y > ALONG + BESIDE) return;
      act(within(point.y / ALONG).toFixed(3), within(point.x / this.across).toFixed(3));
    });
  }

  /* Names a place: its ninth of the roof, and the nearest object within reach. */
  zoneAt(x, y) {
    const near = this.objects
      .map((object) => ({
        name: object.name,
        far: Math.hypot(beyond((x - object.x) * this.length, object.length), beyond((y - object.y) * this.width, object.width)),
        area: object.length * object.width,
      }))
      .filter((object) => object.far <= NEAR_METRES)
      .sort((a, b) => a.far - b.far || a.area - b.area)[0];
    const field = ALONG_NAMES[third(x)] + '-' + ACROSS_NAMES[third(y)];
    return near ? field + ', ' + near.name : field;
  }

  /* Draws numbered dots; one without a number is the place just tapped. */
  draw(places) {
    this.dots.replaceChildren(...places.flatMap(({ x, y, number }) => {
      const at = { x: y * this.across, y: x * ALONG };
      const dot = node('circle', { class: number ? 'dot' : 'dot now', cx: at.x, cy: at.y, r: 26 });
      return number ? [dot, node('text', { class: 'dot-label', x: at.x, y: at.y + 10 }, number)] : [dot];
    }));
  }
}

function node(tag, attributes, text) {
  const made = document.createElementNS('http://www.w3.org/2000/svg', tag);
  Object.entries(attributes).forEach(([name, value]) => made.setAttribute(name, value));
  if (text) made.textContent = text;
  return made;
}
