// Measures, and does not judge, how soon the example run's weights stand there: after opening, and after a key. By the
// browser's own clock, until the browser has drawn them.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { browser, examples, open_in, run, Serving, settled, to } from "./bench.mjs";

const tablet = { width: 1180, height: 820 };
const keys = 40;
const chromium = await browser();

const middle = (times, share) => [...times].sort((a, b) => a - b)[Math.floor((times.length - 1) * share)].toFixed(1);
const told = (times) => `median ${middle(times, 0.5)} ms, 90 of 100 within ${middle(times, 0.9)} ms`;

/** From each key typed into a field until the words of `shown` are others, none of them struck out, and drawn. */
const keystrokes = (page, { field, texts, shown, rest = 700 }) =>
  page.evaluate(
    async ({ field, texts, shown, rest }) => {
      const now = () => document.querySelector(shown).textContent;
      const is_fresh = (before) => now() !== before && !document.querySelector(`${shown} .old`);
      const times = [];
      for (const text of texts) {
        const input = document.querySelector(field);
        const before = now();
        const start = performance.now();
        input.focus();
        input.value = text;
        input.dispatchEvent(new InputEvent("input", { bubbles: true }));
        times.push(
          await new Promise((done) => {
            const watch = new MutationObserver(() => {
              if (!is_fresh(before)) return;
              watch.disconnect();
              requestAnimationFrame(() => {
                const { port1, port2 } = new MessageChannel(); // told after the frame is drawn
                port1.onmessage = () => done(performance.now() - start);
                port2.postMessage(0);
              });
            });
            watch.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
          }),
        );
        await new Promise((rested) => setTimeout(rested, rest)); // usually, what is drawn and saved later is over
      }
      return times;
    },
    { field, texts, shown, rest },
  );

// All in one batch, each another number than the one before.
const pieces = Array.from({ length: keys }, (_, i) => String(18 + ((5 * i) % 7)));

/** The example with its studio, of which the packs lie open: what a piece costs is asked for after each plan. */
async function with_costs(test) {
  const name = "spring_cups.run.json";
  const { money, ...bare } = examples(name)[name];
  const documents = {
    ...examples("meadow_base.formula.json", "cloud_topping.formula.json"),
    [name]: bare,
    "studio.json": { schema: "brimwright.studio/1", ...money, work: { paid_an_hour: "24.00", each_batch: "90 min" } },
  };
  const serving = new Serving();
  for (const [file, json] of Object.entries(documents)) writeFileSync(join(serving.folder, file), JSON.stringify(json));
  await serving.start();
  const context = await chromium.newContext({ viewport: tablet });
  await test(await open_in(context, serving.address, "Set up"));
  await context.close();
  await serving.end();
}

await run({
  "weights after opening": async () => {
    const times = [];
    for (let i = 0; i < 8; ++i) {
      const serving = await new Serving().start();
      const context = await chromium.newContext({ viewport: tablet });
      const page = await context.newPage();
      await page.addInitScript(() => {
        new MutationObserver((_, watch) => {
          if (!document.querySelector(".weigh .amount:not(.old) b")) return;
          watch.disconnect();
          requestAnimationFrame(() => setTimeout(() => (window.drawn_at = performance.now())));
        }).observe(document, { subtree: true, childList: true });
      });
      await page.goto(serving.address);
      await page.waitForFunction(() => window.drawn_at);
      times.push(await page.evaluate(() => window.drawn_at));
      await context.close();
      await serving.end();
    }
    console.log(`first weights after opening: ${told(times)}`);
  },
  "weights after a key": async () => {
    const serving = await new Serving().start();
    const context = await chromium.newContext({ viewport: tablet });
    const page = await open_in(context, serving.address, "Weigh");
    await settled(page);
    await page.waitForTimeout(1500);
    const at_weights = { field: "#f-run-sell", texts: pieces, shown: ".weighing" };
    console.log(`key to weights: ${told(await keystrokes(page, at_weights))}`);
    await to(page, "Set up");
    const in_set_up = { field: "#f-run-sell", texts: pieces, shown: ".order-of" };
    console.log(`key to results, all parts of the set-up open: ${told(await keystrokes(page, in_set_up))}`);
    await context.close();
    await serving.end();
  },
  "results after a key, while what it costs is asked for": () =>
    with_costs(async (page) => {
      await settled(page);
      await page.locator(".of-studio summary", { hasText: /^Packs/ }).click();
      await page.waitForTimeout(1500);
      const at_results = { field: "#f-run-sell", texts: pieces, shown: ".order-of" };
      console.log(`key to results, packs open: ${told(await keystrokes(page, at_results))}`);
      const in_the_midst = await keystrokes(page, { ...at_results, rest: 320 });
      console.log(`key in the midst of asking what it costs: ${told(in_the_midst)}`);
      await to(page, "Piece");
      await page.locator(".quote-table:not(.old)").waitFor();
      const numbers = pieces.map((one, i) => `${one}, ${24 + i}`);
      const at_costs = { field: "#quote-numbers", texts: numbers, shown: ".quote-table" };
      console.log(`key to costs of two numbers: ${told(await keystrokes(page, at_costs))}`);
    }),
});
await chromium.close();
