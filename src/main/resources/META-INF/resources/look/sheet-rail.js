/* The rail of steps: where one is, what is done and what is missing. */
const TITLES = { cautions: 'Cautions: not all read', facts: 'The roof: work not started', wash: 'Clear and wash: not everything ticked', dry: 'Dry: not confirmed', look: 'Look and feel: not everything ticked' };

const ticked = (name) => {
  const boxes = [...document.querySelectorAll('[name=' + name + ']')];
  return boxes.length > 0 && boxes.every((box) => box.checked);
};

export class Rail {
  constructor() {
    this.links = [...document.querySelectorAll('.rail a')];
    const watch = new IntersectionObserver((steps) => {
      steps.filter((step) => step.isIntersecting).forEach((step) => this.mark(step.target.id));
    }, { rootMargin: '-25% 0px -65% 0px' });
    document.querySelectorAll('.step').forEach((step) => watch.observe(step));
  }

  mark(id) {
    this.links.forEach((link) => {
      if (link.hash === '#' + id) link.setAttribute('aria-current', 'step');
      else link.removeAttribute('aria-current');
    });
  }

  render({ read, started, found, signed }) {
    const done = { cautions: read, facts: started, wash: ticked('wash'), dry: ticked('dry'), look: ticked('look'), findings: found > 0, sign: signed };
    this.links.forEach((link) => {
      const id = link.hash.slice(1);
      const section = document.getElementById(id);
      const isDone = section.dataset.done ? section.dataset.done === 'yes' : Boolean(done[id]);
      link.classList.toggle('done', isDone);
      link.querySelector('.how').textContent = isDone ? ', done' : id in TITLES ? ', missing' : '';
      done[id] = isDone;
    });
    const missing = Object.keys(TITLES).filter((id) => !done[id]);
    const box = document.getElementById('missing');
    if (!box) return;
    box.hidden = missing.length === 0 || signed;
    box.querySelector('ul').replaceChildren(...missing.map((id) => {
      const item = document.createElement('li');
      item.append(Object.assign(document.createElement('a'), { href: '#' + id, textContent: TITLES[id] }));
      return item;
    }));
  }
}
