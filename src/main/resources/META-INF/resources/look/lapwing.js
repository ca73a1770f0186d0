/* What gets better with JavaScript on every page. Nothing here is needed for a page to work. */
document.documentElement.classList.add('js');

/* A choice that sends its form at once: the depot switch and the filters. */
document.addEventListener('change', (event) => {
  const form = event.target.closest('form[data-send-on-change]');
  if (form) form.requestSubmit();
});

/* A form is sent once, however often its button is pressed. */
document.addEventListener('submit', (event) => {
  const form = event.target;
  if (form.method !== 'post' || event.defaultPrevented) return;
  if (form.dataset.sent) { event.preventDefault(); return; }
  form.dataset.sent = 'yes';
});
window.addEventListener('pageshow', () => {
  document.querySelectorAll('form[data-sent]').forEach((form) => delete form.dataset.sent);
});

/* One open row at a time; Escape closes it and gives the focus back. */
document.addEventListener('toggle', (event) => {
  if (!event.target.matches('details.act') || !event.target.open) return;
  document.querySelectorAll('details.act[open]').forEach((other) => {
    if (other !== event.target) other.open = false;
  });
}, true);
document.addEventListener('keydown', (event) => {
  const open = event.target.closest('details.act[open]');
  if (event.key !== 'Escape' || !open) return;
  open.open = false;
  open.querySelector('summary').focus();
});

/* Sheets kept for work without a network: gone with the sign-out and whenever somebody has to sign in. What was entered
   and not sent yet stays, under the name of who entered it. */
async function forgetSheets() {
  Object.keys(localStorage)
    .filter((name) => name.startsWith('lapwing-sheet:') && !/:(entry|id|draft):/.test(name))
    .forEach((name) => localStorage.removeItem(name));
  if (!window.caches || !navigator.serviceWorker) return;
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith('lapwing-sheet:')).map((name) => caches.delete(name)));
  const workers = await navigator.serviceWorker.getRegistrations();
  await Promise.all(workers.map((worker) => worker.unregister()));
}
document.addEventListener('submit', (event) => {
  if (event.target.getAttribute('action') === '/sign-out') forgetSheets();
});
if (location.pathname === '/sign-in') forgetSheets();
