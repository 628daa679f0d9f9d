const KEY = 'bowline/light';

/** Daylight paper, or the dim light of a pit; kept in this browser. */
export function startLight(): void {
  const kept = localStorage.getItem(KEY);
  const dark = kept ? kept === 'stand' : matchMedia('(prefers-color-scheme: dark)').matches;
  document.documentElement.dataset.light = dark ? 'stand' : 'day';
}

export function nextLight(): void {
  const next = document.documentElement.dataset.light === 'stand' ? 'day' : 'stand';
  document.documentElement.dataset.light = next;
  localStorage.setItem(KEY, next);
}
