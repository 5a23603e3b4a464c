// Numbers the lines of a part's file, marks those with something to mend, and jumps to one. All else works without it.
"use strict";
(() => {
  const text = document.querySelector(".lines textarea");
  const gutter = document.querySelector(".gutter");
  const seen = document.querySelector("#seen");
  if (!text || !gutter || !seen) return;

  const faulty = () => new Set([...seen.querySelectorAll(".stop ~ .said .at")].map((at) => Number(at.dataset.line)));

  const number = () => {
    const marked = faulty();
    const count = text.value.split("\n").length;
    gutter.replaceChildren(
      ...Array.from({ length: count }, (_, index) => {
        const line = document.createElement(marked.has(index + 1) ? "b" : "span");
        line.textContent = String(index + 1);
        return line;
      }),
    );
    follow();
  };

  const follow = () => {
    gutter.style.height = text.clientHeight + "px";
    gutter.scrollTop = text.scrollTop;
  };

  const goTo = (line) => {
    const lines = text.value.split("\n");
    const from = lines.slice(0, line - 1).join("\n").length + (line > 1 ? 1 : 0);
    text.focus();
    text.setSelectionRange(from, from + (lines[line - 1] ?? "").length);
    text.scrollTop = Math.max(0, (line - 5) * 22);
  };

  seen.addEventListener("click", (event) => {
    const at = event.target.closest(".at");
    if (at) goTo(Number(at.dataset.line));
  });
  // A length touched in the drawing opens what may be done to it.
  const open = (name) => {
    const row = name.startsWith("#length-") && seen.querySelector(name)?.closest("details");
    if (!row) return false;
    row.open = true;
    row.scrollIntoView({ block: "center" });
    row.querySelector("summary").focus({ preventScroll: true });
    return true;
  };
  seen.addEventListener("click", (event) => {
    const tap = event.target.closest(".tap");
    if (tap && open(tap.getAttribute("href"))) event.preventDefault();
  });

  seen.addEventListener("htmx:afterSwap", number);
  text.addEventListener("input", number);
  text.addEventListener("scroll", follow);
  new ResizeObserver(follow).observe(text);
  number();
})();
