// The level curve, with the pour line on it.
import uPlot from "uplot";
import type { Gauge } from "../program/answers";

class LevelCurve extends HTMLElement {
  #plot?: uPlot;
  #gauge?: Gauge;
  #line = 0;
  #watch = new ResizeObserver(() => this.#fit());

  set gauge(gauge: Gauge) {
    if (gauge === this.#gauge) return;
    this.#gauge = gauge;
    this.#make();
  }

  set line(mm: number) {
    if (mm === this.#line) return;
    this.#line = mm;
    this.#plot?.redraw(false);
  }

  connectedCallback(): void {
    this.#watch.observe(this);
    this.#make();
  }

  disconnectedCallback(): void {
    this.#watch.disconnect();
    this.#plot?.destroy();
    this.#plot = undefined;
  }

  #fit(): void {
    if (this.clientWidth) this.#plot?.setSize({ width: this.clientWidth, height: 260 });
  }

  #make(): void {
    const levels = this.#gauge?.pockets[0]?.levels ?? [];
    if (!this.isConnected || !levels.length) return;
    this.#plot?.destroy();
    const depth = [0, ...levels.map((level) => level.depth_mm)];
    const volume = [0, ...levels.map((level) => level.volume_ml)];
    const ink = getComputedStyle(this).color;
    const axis = {
      stroke: ink,
      font: "16px system-ui",
      labelFont: "16px system-ui",
      labelSize: 26,
      grid: { stroke: "#8884" },
    };
    this.#plot = new uPlot(
      {
        width: this.clientWidth || 320,
        height: 260,
        legend: { show: false },
        cursor: { show: false },
        scales: { x: { time: false } },
        axes: [
          { ...axis, label: "depth, mm" },
          { ...axis, label: "volume, ml", size: 60 },
        ],
        pxAlign: 0, // whole pixels would make steps of a smooth curve
        series: [{}, { stroke: ink, width: 2.5, pxAlign: 0, points: { show: false } }],
        hooks: { draw: [(plot) => this.#mark(plot)] },
      },
      [depth, volume],
      this,
    );
  }

  #mark(plot: uPlot): void {
    const x = plot.valToPos(this.#line, "x", true);
    const { ctx, bbox } = plot;
    ctx.save();
    ctx.strokeStyle = getComputedStyle(this).color;
    ctx.lineWidth = 2 * devicePixelRatio;
    ctx.setLineDash([8, 5]);
    ctx.beginPath();
    ctx.moveTo(x, bbox.top);
    ctx.lineTo(x, bbox.top + bbox.height);
    ctx.stroke();
    ctx.restore();
  }
}

customElements.define("level-curve", LevelCurve);
