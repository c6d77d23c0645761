// Before anything is painted: light or dark paper, and whether the first screen is wanted (look/theme.ts and
// state/opening_note.ts keep the notes; whoever has a job of their own, or asked for a place, goes there).
(() => {
  let look;
  let own = false;
  try {
    look = localStorage.getItem("stringcourse-look");
    own = localStorage.getItem("stringcourse-own-job") !== null;
  } catch {
    // A browser without a store: the device's own look, and the first screen.
  }
  if (look !== "light" && look !== "dark")
    look = matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light";
  const page = document.documentElement;
  page.setAttribute("data-look", look);
  const elsewhere = location.hash !== "" && location.hash !== "#jobs";
  page.setAttribute("data-first", own || elsewhere ? "no" : "yes");
})();
