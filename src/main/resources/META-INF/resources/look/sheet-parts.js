/* The parts of the sheet with forms of their own: wash, drying, sealant, stop. Their entries are kept and sent like the
   rest; a part is shown anew when nothing waits any more. */
const STOP = '/stop-and-refer';

export class Parts {
  constructor(queue, drafts) {
    this.queue = queue;
    this.drafts = drafts;
    this.forms = [...document.querySelectorAll('form[data-keep]')];
  }

  /* Keeps what a form holds. Where it counts when a thing was done, that is now, however late it is sent. */
  keep(form, submitter) {
    const fields = [...new FormData(form)];
    if (submitter && submitter.name) fields.push([submitter.name, submitter.value]);
    if (form.dataset.moment) fields.push([form.dataset.moment, new Date().toISOString()]);
    this.queue.add(form.getAttribute('action'), fields, form.dataset.keep);
    form.reset();
    this.drafts.forget(form);
  }

  /* Says at each form what of it is on this phone only. */
  render() {
    const entries = this.queue.list();
    this.forms.forEach((form) => {
      const kept = entries.filter((entry) => entry.path === form.getAttribute('action'));
      const line = form.querySelector('.kept-here') || form.appendChild(Object.assign(document.createElement('p'), { className: 'kept-here' }));
      line.textContent = kept.map((entry) => entry.words + (entry.refused ? ': not taken' : ': on this phone, not sent yet')).join('. ');
      line.hidden = kept.length === 0;
    });
    const early = document.getElementById('early-field');
    if (early && entries.some((entry) => entry.path.endsWith('/roof/wash'))) early.hidden = false;
  }

  /* Whether the work was stopped on this phone and the service need only hear of it. */
  stopped() { return this.queue.list().some((entry) => entry.path.endsWith(STOP) && !entry.refused); }
}
