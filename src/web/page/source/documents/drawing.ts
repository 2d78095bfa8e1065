// When the page is drawn: once for all changes of one turn, and not beneath a finger.

let draw: () => void = () => {};
let is_due = false;
let is_held = false; // a finger is down
let is_behind = false; // what was due was not drawn for it

export function drawn_by(drawing: () => void): void {
  draw = drawing;
}

export function redraw(): void {
  if (is_due) return;
  is_due = true;
  queueMicrotask(() => {
    is_due = false;
    if (is_held) is_behind = true;
    else draw_now();
  });
}

function draw_now(): void {
  is_behind = false;
  draw();
}

const longest_ms = 1500; // a hand that rests on the page does not stop it
let timer = 0;

function lift(): void {
  clearTimeout(timer);
  is_held = false;
  if (is_behind) draw_now();
}

/**
 * What comes while a finger is down is drawn once it is lifted: what it presses does not move away beneath it, and no
 * press is lost or taken by a neighbour. What is dragged, and what opens a list of its own, is drawn all along.
 */
export function hold_still_beneath_a_finger(): void {
  const press = ({ target }: Event) => {
    if (!(target instanceof Element) || target.closest("[role=slider], select, canvas")) return;
    is_held = true;
    clearTimeout(timer);
    timer = window.setTimeout(lift, longest_ms);
  };
  addEventListener("pointerdown", press, true);
  for (const end of ["pointerup", "pointercancel"]) addEventListener(end, () => setTimeout(lift), true);
  // What the press does is drawn at once, with all that waited.
  addEventListener("click", () => (is_held = false), true);
}
