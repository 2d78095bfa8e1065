// A mould from the side, small, in a list: drawn once it is near enough to be seen.
import { html, nothing, render } from "lit";
import { outline_in } from "../documents/outlines";
import { path_of, type Outline } from "../program/outline";

class MouldPicture extends HTMLElement {
  static observedAttributes = ["file", "changed"];
  #outline?: Outline;
  #nearness = new IntersectionObserver(([entry]) => entry.isIntersecting && this.#come(), { rootMargin: "200px" });

  connectedCallback(): void {
    this.#nearness.observe(this);
  }

  disconnectedCallback(): void {
    this.#nearness.disconnect();
  }

  attributeChangedCallback(): void {
    this.#nearness.disconnect();
    if (this.isConnected) this.#nearness.observe(this);
  }

  #come(): void {
    this.#nearness.disconnect();
    const file = this.getAttribute("file") ?? "";
    requestIdleCallback(
      () =>
        void outline_in(file, this.getAttribute("changed") ?? "").then((outline) => {
          if (file !== this.getAttribute("file")) return;
          this.#outline = outline;
          this.#draw();
        }),
      { timeout: 1000 },
    );
  }

  #draw(): void {
    const outline = this.#outline;
    if (!outline) return void render(nothing, this);
    const { left, right, floor, brim, loops } = outline;
    const margin = 0.04 * Math.max(right - left, brim - floor);
    const box = [left - margin, -brim - margin, right - left + 2 * margin, brim - floor + 2 * margin];
    render(
      html`<svg viewBox=${box.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${path_of(loops)} />
      </svg>`,
      this,
    );
  }
}

customElements.define("mould-picture", MouldPicture);
