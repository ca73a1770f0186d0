/* The drawn roof of the sheet: a tap becomes a place, and the place gets its name by the rule of the service. */
import { zoneAt } from './roof-plan.js';

const ALONG = 1000;
/* A tap this far beside the roof, in points, is meant for its edge. */
const BESIDE = 40;

const within = (share) => Math.min(1, Math.max(0, share));

export class Plan {
  constructor(svg) {
    this.svg = svg;
    this.plan = JSON.parse(svg.dataset.plan);
    this.across = Number(svg.dataset.across);
    this.dots = svg.querySelector('#dots');
  }

  onTap(act) {
    this.svg.addEventListener('click', (event) => {
      const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(this.svg.getScreenCTM().inverse());
      if (point.x < -BESIDE || point.x > this.across + BESIDE || point.y < -BESIDE || point.y > ALONG + BESIDE) return;
      act(within(point.y / ALONG).toFixed(3), within(point.x / this.across).toFixed(3));
    });
  }

  zoneAt(x, y) {
    return zoneAt(this.plan, x, y);
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
