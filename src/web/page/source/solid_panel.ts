// The place of the solid view: its buttons, and a drawing where the browser has no WebGL.
import { html, nothing, render } from "lit";
import { bytes } from "./api";
import type { Solid } from "./outline";
import type { Turntable } from "./solid_view";

const eighth = Math.PI / 8;

export class SolidPanel extends HTMLElement {
  #solids: Solid[] = [];
  #table?: Turntable;
  #has_none = false;
  #picture = "";
  #mould = "";
  #is_cut = false;
  #watch = new ResizeObserver(() => this.#table?.fit());

  set solids(solids: Solid[]) {
    if (solids === this.#solids) return;
    this.#solids = solids;
    this.#table?.show(solids);
  }

  set mould(file: string) {
    if (file === this.#mould) return;
    this.#mould = file;
    if (this.#has_none) void this.#fall_back();
  }

  connectedCallback(): void {
    this.#draw();
    // After the figures, never before them.
    requestIdleCallback(() => void this.#begin(), { timeout: 1500 });
  }

  disconnectedCallback(): void {
    this.#watch.disconnect();
    this.#table?.end();
    this.#table = undefined;
  }

  async #begin(): Promise<void> {
    const canvas = this.querySelector("canvas");
    if (!this.isConnected || !canvas || this.#table) return;
    try {
      const { turntable } = await import("./solid_view");
      this.#table = turntable(canvas);
      this.#table.show(this.#solids);
      this.#watch.observe(canvas);
    } catch {
      await this.#fall_back();
    }
  }

  /** The program's own drawing: the cut and the plan, with their measures. */
  async #fall_back(): Promise<void> {
    this.#has_none = true;
    this.#draw();
    const picture = await bytes({ kind: "picture", gauge: { file: this.#mould } });
    URL.revokeObjectURL(this.#picture);
    this.#picture = URL.createObjectURL(picture);
    this.#draw();
  }

  #draw(): void {
    const turn = (by: number) => () => this.#table?.turn(by);
    const tip = (by: number) => () => this.#table?.tip(by);
    const cut = () => {
      this.#is_cut = !this.#is_cut;
      this.#table?.cut(this.#is_cut);
      this.#draw();
    };
    const words = html`<canvas role="img" aria-label="The filled cavity as a solid; turn it with the buttons below."></canvas>
      <div class="choice">
        <button type="button" @click=${turn(-eighth)}>Turn left</button>
        <button type="button" @click=${turn(eighth)}>Turn right</button>
        <button type="button" @click=${tip(eighth)}>From above</button>
        <button type="button" @click=${tip(-eighth)}>From below</button>
        <button type="button" aria-pressed=${this.#is_cut ? "true" : "false"} @click=${cut}>Cut open</button>
      </div>`;
    const instead = html`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#picture ? html`<img src=${this.#picture} alt="The mould cut through its middle and from above, with its measures" />` : nothing}`;
    render(this.#has_none ? instead : words, this);
  }
}

customElements.define("solid-panel", SolidPanel);
