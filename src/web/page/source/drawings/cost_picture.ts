// What a piece costs against the number made, as the program draws it: asked for once it is near enough to be seen.
import { html, nothing, render } from "lit";
import { made_document, Refused } from "../program/api";

class CostPicture extends HTMLElement {
  #question?: object;
  #words = "";
  #address = "";
  #failed = "";
  #nearness = new IntersectionObserver(([entry]) => entry.isIntersecting && void this.#come(), { rootMargin: "200px" });

  connectedCallback(): void {
    this.#watch();
  }

  disconnectedCallback(): void {
    this.#nearness.disconnect();
    this.#forget();
  }

  set words(words: string) {
    this.#words = words;
  }

  /** Another one: what was drawn is of another number. */
  set question(question: object) {
    if (JSON.stringify(question) === JSON.stringify(this.#question)) return;
    this.#question = question;
    this.#forget();
    this.#draw();
    this.#watch();
  }

  #watch(): void {
    this.#nearness.disconnect();
    if (this.isConnected) this.#nearness.observe(this);
  }

  #forget(): void {
    if (this.#address) URL.revokeObjectURL(this.#address);
    [this.#address, this.#failed] = ["", ""];
  }

  async #come(): Promise<void> {
    this.#nearness.disconnect();
    const question = this.#question;
    const [address, failed] = await drawn(question);
    if (question !== this.#question || !this.isConnected) return URL.revokeObjectURL(address);
    [this.#address, this.#failed] = [address, failed];
    this.#draw();
  }

  #draw(): void {
    const waiting = this.#failed || "Drawing ...";
    render(
      this.#address
        ? html`<img src=${this.#address} alt=${this.#words} />`
        : html`<p class="hint">${this.#question ? waiting : nothing}</p>`,
      this,
    );
  }
}

/** An address of it, or why there is none. */
async function drawn(question: object | undefined): Promise<[address: string, failed: string]> {
  try {
    return [URL.createObjectURL(await made_document({ kind: "picture", quote: question })), ""];
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return ["", error.message];
  }
}

customElements.define("cost-picture", CostPicture);
