/* What is being typed or ticked and is no entry yet: kept on the phone as it is, and there again after a reload. */
const LEFT_OUT = new Set(['key', 'seen']);

export class Drafts {
  constructor(queue) {
    this.queue = queue;
    this.forms = [...document.querySelectorAll('form[data-draft]')];
    const keep = (event) => { if (event.target.form) this.keep(event.target.form); };
    document.addEventListener('input', keep);
    document.addEventListener('change', keep);
  }

  keep(form) {
    if (!form.dataset.draft) return;
    this.queue.keep('draft:' + form.dataset.draft, [...new FormData(form)].filter(([name]) => !LEFT_OUT.has(name)));
  }

  forget(form) { this.queue.forget('draft:' + form.dataset.draft); }

  restore() {
    this.forms.forEach((form) => {
      const draft = this.queue.recall('draft:' + form.dataset.draft);
      const chosenByAddress = form.elements.finding && form.elements.finding.value;
      if (draft && !chosenByAddress) Drafts.fill(form, draft);
    });
  }

  /* Puts fields into a form; a choice that the form does not offer is added to it. */
  static fill(form, fields) {
    const values = new Map();
    fields.forEach(([name, value]) => values.set(name, [...(values.get(name) || []), value]));
    [...form.elements].filter((field) => values.has(field.name)).forEach((field) => {
      const given = values.get(field.name);
      if (field.type === 'checkbox' || field.type === 'radio') field.checked = given.includes(field.value);
      else Drafts.set(field, given[0]);
    });
  }

  static set(field, value) {
    if (field.options && value && ![...field.options].some((option) => option.value === value)) field.add(new Option(value, value));
    field.value = value;
  }
}
