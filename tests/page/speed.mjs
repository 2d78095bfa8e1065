// Measures, and does not judge: first weight after opening, and keystroke to new weight.
import { browser, open, run, Serving, settled } from "./bench.mjs";

const chromium = await browser();
await run({
  "how long the page takes": async () => {
    const serving = await new Serving().start();
    const page = await open(chromium, serving.address);
    await settled(page);
    const first = await page.evaluate(() => performance.now());
    await page.waitForTimeout(1500);
    const taken = await page.evaluate(async () => {
      const input = document.querySelector("#f-run-sell");
      const times = [];
      for (let i = 0; i < 20; ++i) {
        const start = performance.now();
        input.value = String(20 + 3 * i);
        input.dispatchEvent(new Event("input"));
        const weight = () => document.querySelector(".lane.pour .weights .value b").textContent;
        const before = weight();
        await new Promise((done) => {
          const look = () =>
            weight() !== before && document.documentElement.dataset.settled === "true"
              ? done()
              : requestIdleCallback(look, { timeout: 1 });
          look();
        });
        times.push(performance.now() - start);
        await new Promise((done) => setTimeout(done, 700));
      }
      return times.sort((a, b) => a - b);
    });
    console.log(
      `first weights settled by ${first.toFixed(0)} ms; keystroke to weight: median ${taken[10].toFixed(1)} ms, worst ${taken[19].toFixed(1)} ms`,
    );
    await page.context().close();
    await serving.end();
  },
});
await chromium.close();
