/* The slider over a roof plan: shows what had been found until a day, what was found earlier than that day paler. */
document.querySelectorAll('.roof-story').forEach((story) => {
  const slider = story.querySelector('#until');
  if (!slider) return;
  const days = [...story.querySelectorAll('.days li')].map((item) => ({ day: item.dataset.day, words: item.textContent }));
  const shown = story.querySelector('#until-day');
  const show = () => {
    const { day, words } = days[Number(slider.value)];
    shown.textContent = words;
    slider.setAttribute('aria-valuetext', words);
    story.querySelectorAll('.mark, .roof-found > li').forEach((item) => {
      item.toggleAttribute('hidden', item.dataset.day > day);
      item.classList.toggle('earlier', item.dataset.day < day);
    });
  };
  slider.max = String(days.length - 1);
  slider.value = slider.max;
  slider.addEventListener('input', show);
  show();
});
