// When the page is drawn: once for all changes of one turn.

let draw: () => void = () => {};
let is_due = false;

export function drawn_by(drawing: () => void): void {
  draw = drawing;
}

export function redraw(): void {
  if (is_due) return;
  is_due = true;
  queueMicrotask(() => {
    is_due = false;
    draw();
  });
}
