/* Sends photos one by one as soon as they are chosen. Each is kept in the browser until the service has it: without a
   connection, after a reload or when the page was closed meanwhile, it is sent later, and never twice. */
const form = document.querySelector('form[data-photos]');
const PAUSES = [2, 5, 15, 60];

const store = {
  open() {
    return new Promise((resolve, reject) => {
      const asked = indexedDB.open('lapwing-photos', 1);
      asked.onupgradeneeded = () => asked.result.createObjectStore('waiting', { keyPath: 'key' });
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
  },
  async run(mode, act) {
    const database = await store.open();
    return new Promise((resolve, reject) => {
      const asked = act(database.transaction('waiting', mode).objectStore('waiting'));
      asked.onsuccess = () => { resolve(asked.result); database.close(); };
      asked.onerror = () => { reject(asked.error); database.close(); };
    });
  },
  put: (photo) => store.run('readwrite', (all) => all.put(photo)),
  remove: (key) => store.run('readwrite', (all) => all.delete(key)),
  all: () => store.run('readonly', (all) => all.getAll()),
};

function make(tag, properties, ...children) {
  const node = Object.assign(document.createElement(tag), properties);
  node.append(...children);
  return node;
}

function line(photo) {
  const words = make('span', { textContent: photo.name + ': waits' });
  const bar = make('progress', { max: 1, value: 0 });
  bar.setAttribute('aria-label', 'Sending ' + photo.name);
  const item = make('li', {}, words, bar);
  form.querySelector('.sending').append(item);
  return {
    say: (text) => { words.textContent = photo.name + ': ' + text; },
    progress: (share) => { bar.value = share; },
    offer(label, act) {
      const button = make('button', { type: 'button', className: 'btn btn-plain', textContent: label });
      button.addEventListener('click', () => { button.remove(); act(); });
      item.append(button);
      return button;
    },
    remove: () => item.remove(),
  };
}

function post(photo, progress) {
  return new Promise((resolve) => {
    const body = new FormData();
    Object.entries(photo.fields).forEach(([name, value]) => body.append(name, value));
    body.append('photos', photo.file, photo.name);
    const request = new XMLHttpRequest();
    request.open('POST', photo.address);
    request.setRequestHeader('Idempotency-Key', photo.key);
    request.setRequestHeader('Accept', 'application/json');
    request.responseType = 'json';
    request.upload.onprogress = (event) => { if (event.lengthComputable) progress(event.loaded / event.total); };
    request.onload = () => resolve({ status: request.status, answer: request.response });
    request.onerror = () => resolve({ status: 0 });
    request.send(body);
  });
}

function show(photos) {
  const gallery = form.parentElement.querySelector('.photos');
  photos.filter((photo) => photo.address && !gallery.querySelector(`a[href="${photo.address}"]`)).forEach((photo) => {
    const what = photo.zone || 'added just now';
    const picture = make('img', { src: photo.thumbnail, alt: 'Photo, ' + what });
    gallery.append(make('li', {}, make('a', { href: photo.address }, picture), make('div', { className: 'under', textContent: what })));
  });
}

/** Sends a photo until the service has it or refuses it; the line tells how that goes. */
async function send(photo, attempt = 0, row = line(photo)) {
  row.say('is being sent');
  const { status, answer } = await post(photo, row.progress);
  if (status === 200 || status === 201) {
    await store.remove(photo.key);
    show(answer.items);
    row.remove();
  } else if (status === 0 || status === 401 || status >= 500) {
    waitAndSend(photo, attempt, row, status);
  } else {
    await store.remove(photo.key);
    row.say('was not taken. ' + refusal(answer));
    row.offer('Close', row.remove);
  }
}

function refusal(answer) {
  if (!answer) return 'The file may be too large.';
  return (answer.errors || []).map((error) => error.message).join('; ') || answer.detail;
}

function waitAndSend(photo, attempt, row, status) {
  const again = () => { clearTimeout(timer); window.removeEventListener('online', again); now.remove(); send(photo, attempt + 1, row); };
  const timer = setTimeout(again, PAUSES[Math.min(attempt, PAUSES.length - 1)] * 1000);
  window.addEventListener('online', again);
  row.say(status === 401 ? 'is kept here; sign in again to send it' : 'is kept here until there is a connection');
  row.progress(0);
  const now = row.offer('Send now', again);
}

async function take(files) {
  const fields = Object.fromEntries([...new FormData(form)].filter(([, value]) => typeof value === 'string' && value));
  for (const file of files) {
    const photo = { key: crypto.randomUUID ? crypto.randomUUID() : String(Math.random()).slice(2) + Date.now(), address: form.dataset.photos, name: file.name, file, fields };
    if (file.size > Number(form.dataset.most) * 1e6) {
      const row = line(photo);
      row.say(`is larger than ${form.dataset.most} MB and was not sent.`);
      row.offer('Close', row.remove);
      continue;
    }
    await store.put(photo);
    send(photo);
  }
}

if (form) {
  const input = form.querySelector('input[type=file]');
  form.querySelector('button').hidden = true;
  input.addEventListener('change', () => { take([...input.files]); input.value = ''; });
  store.all().then((waiting) => waiting.filter((photo) => photo.address === form.dataset.photos).forEach((photo) => send(photo)));
}
