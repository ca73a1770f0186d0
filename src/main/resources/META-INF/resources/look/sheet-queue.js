/* Keeps each entry on this phone at once and sends it when there is signal: in order, each under a key of its own, so
   that one whose answer was lost is sent again without being stored twice. An entry that the service does not take
   stops the rest until a person has decided about it. */
const PAUSES = [1000, 2000, 4000, 8000, 15000];
const PATIENCE = 20000;

export class Queue {
  /* changed is called whenever there is something new to show, answered with each answer of the service. */
  constructor(task, person, { changed, answered }) {
    this.prefix = 'lapwing-sheet:' + task + ':' + person + ':';
    this.root = '/tasks/' + task + '/sheet/';
    this.changed = changed;
    this.answered = answered;
    this.sending = false;
    this.stranger = false;
    this.failures = 0;
    this.unkept = [];
    window.addEventListener('online', () => this.send());
    window.addEventListener('storage', (event) => { if (!event.key || event.key.startsWith(this.prefix)) changed(); });
    document.addEventListener('visibilitychange', () => { if (!document.hidden) this.send(); });
  }

  /* What this phone keeps for the sheet beside the entries: drafts, the last state, what was seen. */
  recall(name) {
    const text = localStorage.getItem(this.prefix + name);
    return text === null ? null : JSON.parse(text);
  }
  keep(name, value) {
    try {
      localStorage.setItem(this.prefix + name, JSON.stringify(value));
      return true;
    } catch (full) {
      return false;
    }
  }
  forget(name) { localStorage.removeItem(this.prefix + name); }

  list() {
    const kept = [];
    for (let i = 0; i < localStorage.length; i++) {
      const name = localStorage.key(i);
      if (name.startsWith(this.prefix + 'entry:')) kept.push(JSON.parse(localStorage.getItem(name)));
    }
    return [...kept, ...this.unkept].sort((a, b) => a.order - b.order || (a.key < b.key ? -1 : 1));
  }

  /* Adds an entry and returns it; its path is one of the sheet's own, or begins with a slash. */
  add(path, fields, words) {
    const last = this.list().at(-1);
    const entry = { key: newKey(), order: last ? last.order + 1 : 1, path, fields, words, tried: false };
    if (!this.save(entry)) this.unkept.push(entry);
    this.changed();
    this.send();
    return entry;
  }
  save(entry) { return this.keep('entry:' + entry.key, entry); }

  /* Takes an entry out; only one that was never tried is surely not stored by the service. */
  drop(entry) {
    this.forget('entry:' + entry.key);
    this.unkept = this.unkept.filter((other) => other.key !== entry.key);
  }

  /* Gives an entry that was not taken another try. */
  retry(entry) {
    delete entry.refused;
    this.save(entry);
    this.send();
  }

  send() {
    const work = () => this.drain().finally(() => { this.sending = false; this.changed(); });
    if (this.sending) return Promise.resolve();
    if (!navigator.locks) return work();
    return navigator.locks.request(this.prefix + 'send', { ifAvailable: true }, (lock) => lock && work());
  }

  /* The oldest entry; while that one is refused, only a stop is sent. */
  next() {
    const entries = this.list();
    return entries.some((entry) => entry.refused)
      ? entries.find((entry) => !entry.refused && entry.path.endsWith('/stop-and-refer'))
      : entries[0];
  }

  async drain() {
    for (let entry = this.next(); entry; entry = this.next()) {
      this.sending = true;
      this.changed();
      const fields = this.resolved(entry);
      if (fields && !(await this.deliver(entry, fields))) return;
      if (!fields) this.drop(entry);
    }
  }

  /* Puts the id that the service gave a finding in the place of the key it was sent under; null when it was given none. */
  resolved(entry) {
    const fields = entry.fields.map(([name, value]) => {
      const sentAs = name === 'finding' && value.startsWith('key:');
      return [name, sentAs ? this.recall('id:' + value.slice(4)) : value];
    });
    return fields.some(([, value]) => value === null) ? null : fields;
  }

  /* Sends one entry; false when the next one has to wait. */
  async deliver(entry, fields) {
    entry.tried = true;
    this.save(entry);
    const answer = await this.post(entry, fields);
    this.stranger = answer === 'stranger';
    if (answer === 'lost' || answer === 'stranger') {
      this.wait();
      return false;
    }
    this.failures = 0;
    if (answer.refused) {
      entry.refused = answer.refused;
      this.save(entry);
      return false;
    }
    if (answer.finding) this.keep('id:' + entry.key, answer.finding);
    this.drop(entry);
    this.answered(answer, entry);
    return true;
  }

  async post(entry, fields) {
    try {
      const response = await fetch(entry.path.startsWith('/') ? entry.path : this.root + entry.path, {
        method: 'POST',
        headers: { Accept: 'application/json', 'Idempotency-Key': entry.key },
        body: new URLSearchParams(fields),
        redirect: 'manual',
        signal: AbortSignal.timeout(PATIENCE),
      });
      if (response.status === 401 || response.type === 'opaqueredirect') return 'stranger';
      if (response.status >= 500 || response.status === 429 || response.status === 408) return 'lost';
      const answer = await response.json();
      return response.ok ? answer : { refused: told(answer) };
    } catch (noSignal) {
      return 'lost';
    }
  }

  wait() {
    const pause = PAUSES[Math.min(this.failures++, PAUSES.length - 1)];
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.send(), pause);
  }
}

/* 128 random bits; randomUUID is only there over TLS. */
function newKey() {
  return [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/* Puts a problem answer into words. */
const NAMES = { dryAtInspection: 'Dry roof:', cautionsRead: 'The cautions:', read: 'The cautions:', lengthCm: 'Length', by: 'Your name', statement: 'Your statement',
  cleaner: 'The cleaner', makerStatement: 'The maker\'s statement', washedAt: 'The end of the wash', sealant: 'The sealant', words: 'How it was treated', why: 'The reason', reason: 'The reason' };
function told(problem) {
  const fields = (problem.errors || []).map((error) => {
    const name = error.field.replace(/^\[0\]\./, '');
    return (NAMES[name] || name) + ' ' + error.message;
  });
  return fields.length ? fields.join('; ') : problem.detail;
}
