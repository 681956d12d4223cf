//! Hides the first screen from anyone to whom the page will show something else: who has stored something, opens a link
// or reads another language.
const isFirst = () => {
  try {
    const { length } = localStorage;
    for (let at = 0; at < length; at += 1) if (localStorage.key(at).startsWith('softcrumb')) return false;
    return location.hash === '' && /^en\b/.test(navigator.language);
  } catch {
    return false;
  }
};
if (!isFirst()) document.documentElement.classList.add('not-first');
