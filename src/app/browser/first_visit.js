//! Hides the drawn first screen from everyone whom it does not show what the page will: who has stored something, has a
// link, or reads another language.
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
