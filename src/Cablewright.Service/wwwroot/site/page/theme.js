// Light or dark: as the device says, unless the person has chosen. Not a module, so that it runs before anything is shown.
(() => {
  const key = "cablewright-theme";
  const root = document.documentElement;
  const chosen = () => {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  };
  const isDark = () => (chosen() ?? (matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light")) === "dark";
  const apply = () => {
    root.dataset.theme = isDark() ? "dark" : "light";
    document.getElementById("theme")?.setAttribute("aria-pressed", String(isDark()));
  };
  apply();
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", apply);
  document.addEventListener("DOMContentLoaded", () => {
    apply();
    document.getElementById("theme")?.addEventListener("click", () => {
      const next = isDark() ? "light" : "dark";
      try {
        localStorage.setItem(key, next);
      } catch {
        // Without storage the choice cannot be kept; the device's stays.
      }
      apply();
    });
  });
})();
