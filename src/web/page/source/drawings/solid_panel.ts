// The place of the solid view: its buttons, and a drawing where the browser has no WebGL.
import { html, nothing, render, type TemplateResult } from "lit";
import { Refused, made_document } from "../program/api";
import { solids_of } from "../program/outline";
import type { Turntable } from "./solid_view";

/** Something to look at: what it is called, and what the program makes it of. */
export interface SolidView {
  words: string;
  of: { gauge: unknown } | { plan: unknown };
}

const eighth = Math.PI / 8;
const pause_ms = 500; // after the last change: a solid is not made for every key

class SolidPanel extends HTMLElement {
  #views: SolidView[] = [];
  #chosen = 0;
  #table?: Turntable;
  #is_beginning = false;
  #has_none = false;
  #picture = "";
  #is_cut = false;
  #shown = ""; // the request whose answer stands there
  #said = "Drawing ...";
  #timer = 0;
  #is_near = false; // enough to be looked at soon: what nobody sees is not made
  #watch = new ResizeObserver(() => this.#table?.fit());
  #nearness = new IntersectionObserver(([entry]) => this.#come(entry.isIntersecting), { rootMargin: "400px" });

  set views(views: SolidView[]) {
    this.#views = views;
    this.#show_soon();
  }

  connectedCallback(): void {
    this.#draw();
    this.#nearness.observe(this);
  }

  disconnectedCallback(): void {
    window.clearTimeout(this.#timer);
    this.#nearness.disconnect();
    this.#watch.disconnect();
    this.#table?.end();
    this.#table = undefined;
    this.#shown = "";
    URL.revokeObjectURL(this.#picture);
  }

  #come(is_near: boolean): void {
    this.#is_near = is_near;
    // After the figures, never before them.
    if (is_near) requestIdleCallback(() => void this.#begin(), { timeout: 1500 });
  }

  async #begin(): Promise<void> {
    if (this.#table || this.#has_none) return this.#show_soon();
    const canvas = this.querySelector("canvas");
    if (!this.isConnected || !canvas || this.#is_beginning) return;
    this.#is_beginning = true;
    try {
      const { Turntable } = await import("./solid_view");
      this.#table = new Turntable(canvas);
      this.#watch.observe(canvas);
    } catch {
      this.#has_none = true;
    }
    this.#is_beginning = false;
    this.#draw();
    await this.#show();
  }

  #show_soon(): void {
    const has_begun = this.#table || this.#has_none;
    if (!this.#is_near || !has_begun || this.#request() === this.#shown) return;
    window.clearTimeout(this.#timer);
    this.#timer = window.setTimeout(() => void this.#show(), pause_ms);
  }

  /** The program's own drawing where there is no solid: of the piece from the front, or of the mould with its measures. */
  #request(): string {
    const { of } = this.#views[this.#chosen];
    const kind = this.#has_none ? ("plan" in of ? "piece" : "picture") : "glb";
    const [what, asked] = Object.entries(of)[0] as [string, object];
    return JSON.stringify({ kind, [what]: this.#is_cut && !this.#has_none ? { ...asked, "cut-open": true } : asked });
  }

  async #show(): Promise<void> {
    const request = this.#request();
    if (request === this.#shown) return;
    try {
      const made = await made_document(JSON.parse(request) as object);
      if (request !== this.#request() || !this.isConnected) return; // another is on its way
      if (this.#has_none) {
        URL.revokeObjectURL(this.#picture);
        this.#picture = URL.createObjectURL(made);
      } else {
        this.#table?.show(solids_of(await made.arrayBuffer()));
      }
      this.#shown = request;
      this.#said = "";
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      this.#said = error.message;
    }
    this.#draw();
  }

  #now(change: () => void): void {
    change();
    this.#said = "Drawing ...";
    this.#draw();
    void this.#show();
  }

  #draw(): void {
    const choice = html`<div class="choice" role="group" aria-label="What to look at">
      ${this.#views.map(
        (view, i) =>
          html`<button
            type="button"
            aria-pressed=${i === this.#chosen ? "true" : "false"}
            @click=${() => this.#now(() => (this.#chosen = i))}
          >
            ${view.words}
          </button>`,
      )}
    </div>`;
    const said = html`<p class="aside" role="status">${this.#said}</p>`;
    render(html`${choice} ${this.#has_none ? this.#instead() : this.#turning()} ${said}`, this);
  }

  #turning(): TemplateResult {
    const turn = (by: number) => () => this.#table?.turn(by);
    const tip = (by: number) => () => this.#table?.tip(by);
    const cut = () => this.#now(() => (this.#is_cut = !this.#is_cut));
    return html`<canvas
        role="img"
        aria-label="${this.#views[this.#chosen]?.words ?? ""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${turn(-eighth)}>Turn left</button>
        <button type="button" @click=${turn(eighth)}>Turn right</button>
        <button type="button" @click=${tip(eighth)}>From above</button>
        <button type="button" @click=${tip(-eighth)}>From below</button>
        <button type="button" aria-pressed=${this.#is_cut ? "true" : "false"} @click=${cut}>Cut open</button>
      </div>`;
  }

  #instead(): TemplateResult {
    return html`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${
        this.#picture
          ? html`<img
              src=${this.#picture}
              alt="${this.#views[this.#chosen].words}, drawn to scale with its measures"
            />`
          : nothing
      }`;
  }
}

customElements.define("solid-panel", SolidPanel);
