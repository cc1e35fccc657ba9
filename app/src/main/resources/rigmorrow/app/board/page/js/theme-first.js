// Runs before the page is drawn, so that a remembered theme does not flash.
(() => {
  try {
    const theme = localStorage.getItem('rigmorrow.theme');
    if (theme === 'light' || theme === 'dark') {
      document.documentElement.dataset.theme = theme;
    }
  } catch {
    // Storage is switched off: the system's theme holds.
  }
})();
