// Orders: begun, filled from her runs, costed as the command line has it, put on paper, and kept as every file is.
import assert from "node:assert/strict";
import { existsSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { browser, check_access, check_tablet, examples, on_page, run, settled, tablet, to } from "./bench.mjs";

const chromium = await browser();
const spring = "spring_cups.run.json";
const formulas = ["meadow_base.formula.json", "cloud_topping.formula.json"];
const { money, ...bare } = examples(spring)[spring];
const ids = ["5f1d6bb8-7d34-4c8e-9c6f-3a6f1d1f3c21", "5f1d6bb8-7d34-4c8e-9c6f-3a6f1d1f3c22"];
const studio = {
  schema: "brimwright.studio/1",
  currency: money.currency,
  prices: money.prices,
  work: { paid_an_hour: "24.00", each_batch: "90 min", each_piece_packed: "90 s" },
  tax: { rate: "20 %", prices_paid: "with tax", prices_asked: "with tax" },
  fees: { of_price: "6 %", each_order: "0.40" },
  letterhead: ["Larkfield Soap"],
  asking: { retail: { margin: "40 %" }, wholesale: { markup: "25 %" } },
};
const market = {
  schema: "brimwright.order/1",
  id: ids[1],
  for: "Market",
  due: "2026-12-20",
  lines: [
    { run: spring, pieces: 24 },
    { run: "second.run.json", pieces: 48 },
  ],
};

const with_page = (test, more = {}, viewport = { width: 1180, height: 820 }) =>
  on_page(chromium, test, {
    viewport,
    files: {
      ...examples(...formulas),
      [spring]: bare,
      "second.run.json": { ...bare, name: "Second", id: ids[0] },
      "studio.json": studio,
      ...more,
    },
  });
const field = (page, label) => page.getByLabel(label, { exact: true });
const press = (page, name) => page.getByRole("button", { name, exact: true }).click();
const line = (page, name) => page.getByRole("group", { name, exact: true });
const place = (page) => decodeURIComponent(new URL(page.url()).hash);

async function saved(page) {
  await page.waitForFunction(() =>
    /^Saved in .*order\.json/.test(document.querySelector(".saving")?.textContent ?? ""),
  );
}

async function quoted(page) {
  await page.locator(".quote-table:not(.old)").waitFor();
  await settled(page);
}

async function open_market(page) {
  await to(page, "Orders");
  await page.getByRole("button", { name: /^Market/ }).click();
  await page.getByRole("heading", { name: "Market", level: 1 }).waitFor();
}

/** The figures of each row, by its name; of a way of selling with its name before. */
const table = (page) =>
  page.locator(".quote-table").evaluate((node) => {
    let title = "";
    return Object.fromEntries(
      [...node.rows].flatMap((row) => {
        const name = row.cells[0].innerText.split(/\n| \?$/)[0].trim();
        if (row.matches(".group")) title = name.split(",")[0].toLowerCase();
        if (row.matches(".group, .opened")) return [];
        const under = title && title !== "it costs" ? `${title}: ${name}` : name;
        return [[under, [...row.cells].slice(1).map((cell) => cell.innerText.split("\n")[0])]];
      }),
    );
  });

const per_cent = (share) => `${Number(share.toFixed(1))} %`;

/** The same of an answer. */
function told({ times }) {
  const all = (tell) => times.map(tell).map(String);
  const rows = { "The order, made": all((one) => (one.times === 1 ? "once" : `${one.times} times`)) };
  rows.pieces = all(({ pieces }) => pieces);
  times[0].lines.forEach(({ run, sell }, i) => (rows[`${run}, ${sell} pieces`] = all(({ lines }) => lines[i].cost)));
  rows["The whole order"] = all(({ cost }) => cost);
  rows["To lay out now, in whole packs"] = all(({ cash }) => cash.total ?? "nothing");
  times[0].prices.forEach(({ way }, k) => {
    const of = (tell) => all(({ prices }) => tell(prices[k]));
    times[0].lines.forEach(
      ({ run }, i) => (rows[`${way}: ${run}, a piece`] = all(({ lines }) => lines[i].prices[k].ask)),
    );
    rows[`${way}: Ask, with tax`] = of(({ ask }) => ask);
    rows[`${way}: tax in it`] = of(({ tax }) => tax);
    rows[`${way}: fees`] = of(({ fees }) => fees);
    rows[`${way}: left for you`] = of(({ profit }) => profit);
    rows[`${way}: margin, of the price`] = of((one) => per_cent(one.margin_percent));
    rows[`${way}: markup, on the cost`] = of((one) => per_cent(one.markup_percent));
  });
  return rows;
}

/** What stands on the paper that the button lays out. */
async function printed(page, words) {
  const [paper] = await Promise.all([page.context().waitForEvent("page"), press(page, `${words}, to print`)]);
  await paper.waitForLoadState();
  const text = await paper.locator("body").innerText();
  await paper.close();
  return text;
}

await run({
  "an order is begun, its runs and pieces chosen, and costs what the command line says": () =>
    with_page(async (page, serving) => {
      await to(page, "Orders");
      await check_access(page, "no order yet");
      await field(page, "For").fill("Market, Ana");
      await press(page, "Begin the order");
      await page.getByRole("heading", { name: "Market, Ana", level: 1 }).waitFor();
      await check_access(page, "an order of nothing");
      await field(page, "The run that is ordered").selectOption({ label: "Spring cups, twisted" });
      const first = line(page, "Spring cups, twisted");
      await first.waitFor();
      assert.equal(await first.getByLabel("Pieces").inputValue(), "", "no number is invented");
      await check_access(page, "a line half said");
      await first.getByLabel("Pieces").fill("24");
      await quoted(page);
      await field(page, "Another run").selectOption({ label: "Second" });
      await line(page, "Second").getByLabel("Pieces").fill("48");
      await field(page, "Due").fill("2026-12-20");
      await saved(page);
      await quoted(page);
      const file = "market_ana.order.json";
      const { id, ...order } = serving.file(file);
      assert.match(id, /^[0-9a-f-]{36}$/);
      assert.deepEqual(order, { schema: market.schema, for: "Market, Ana", lines: market.lines, due: market.due });
      assert.deepEqual(await table(page), told(serving.printed("quote", file)));
      assert.equal(place(page), `#order/${file}`);

      await field(page, "How often it is made").fill("1, 2");
      await page.locator(".quote-table thead th", { hasText: "2 times" }).waitFor();
      await quoted(page);
      const answer = serving.printed("quote", file, "--times", "1,2");
      assert.deepEqual(await table(page), told(answer));
      await page.getByRole("button", { name: /^Second, 48 pieces/ }).click();
      const parts = await page.locator(".quote .opened").innerText();
      for (const { part, each } of answer.times[1].lines[1].parts)
        assert.ok(parts.includes(part) && parts.includes(each));
      await page.getByRole("button", { name: /^To lay out now/ }).click();
      const laid_out = await page.locator(".quote .opened").last().innerText();
      const { packs, unpriced } = answer.times[1].cash;
      assert.ok(packs.every(({ shown_as, sum }) => laid_out.includes(shown_as) && laid_out.includes(sum)));
      assert.ok(unpriced.every((one) => laid_out.includes(one)));
      await check_access(page, "an order and what it costs");
      await page.setViewportSize(tablet);
      await check_tablet(page, "an order");
    }),

  "what is typed in an order is taken back and brought again, and the run that lies open keeps its own steps": () =>
    with_page(
      async (page, serving) => {
        await open_market(page);
        await line(page, "Second").getByLabel("Pieces").fill("60");
        await saved(page);
        assert.deepEqual(serving.file("market.order.json").lines[1], {
          run: "second.run.json",
          pieces: 60,
          note_of_hers: 1,
        });
        await page.getByRole("button", { name: "Remove Spring cups, twisted" }).click();
        await saved(page);
        assert.equal(serving.file("market.order.json").lines.length, 1);
        await press(page, "Undo");
        await press(page, "Undo");
        await saved(page);
        assert.deepEqual(serving.file("market.order.json").lines[1].pieces, 48);
        await press(page, "Redo");
        await saved(page);
        assert.deepEqual(serving.file("market.order.json").lines[1].pieces, 60);
        await to(page, "Set up");
        assert.ok(await page.getByRole("button", { name: "Undo" }).isDisabled());
        await page.goBack();
        await page.getByRole("heading", { name: "Market", level: 1 }).waitFor();
      },
      { "market.order.json": { ...market, lines: [market.lines[0], { ...market.lines[1], note_of_hers: 1 }] } },
    ),

  "another hand's order stands here when nothing was typed, and is asked about when something was": () =>
    with_page(
      async (page, serving) => {
        const write = (order) => writeFileSync(join(serving.folder, "market.order.json"), JSON.stringify(order));
        await open_market(page);
        await quoted(page);
        write({ ...market, note: "Ring first." });
        await page.waitForFunction(() => document.getElementById("f-order-note").value === "Ring first.");
        await page.route("**/api/file", (route) =>
          route.request().method() === "PUT" ? route.abort() : route.continue(),
        );
        await field(page, "Note").fill("Mine.");
        await page.waitForTimeout(600);
        write({ ...market, note: "Theirs." });
        await page.unroute("**/api/file");
        await page.getByRole("button", { name: "Load the saved file" }).waitFor();
        await check_access(page, "an order of two hands");
        await press(page, "Load the saved file");
        assert.equal(await field(page, "Note").inputValue(), "Theirs.");
        await press(page, "Change to the other text");
        await saved(page);
        assert.equal(serving.file("market.order.json").note, "Mine.");
        page.said.splice(0); // that a request was cut off
      },
      { "market.order.json": market },
    ),

  "offer, costs, shopping list and sheets of an order go to paper, and the offer has one price that she chose": () =>
    with_page(
      async (page) => {
        await open_market(page);
        await quoted(page);
        assert.ok(await page.getByRole("button", { name: "Offer, to print" }).isDisabled());
        await press(page, "wholesale");
        const offer = await printed(page, "Offer");
        assert.match(
          offer,
          /Larkfield Soap[\s\S]*for Market, due 2026-12-20[\s\S]*Spring cups, twisted[\s\S]*Together/,
        );
        assert.doesNotMatch(offer, /Work|costs/);
        assert.match(
          await printed(page, "All of it, for you"),
          /What it costs, what to ask[\s\S]*THE ORDER COSTS[\s\S]*left for you/,
        );
        assert.match(await printed(page, "Shopping list"), /To buy[\s\S]*Second: 48 pieces to sell[\s\S]*Altogether/);
        const sheets = await printed(page, "Bench sheets");
        assert.match(sheets, /Order for Market, due 2026-12-20/);
        const [file] = await Promise.all([page.waitForEvent("download"), press(page, "Shopping list, PDF")]);
        assert.equal(file.suggestedFilename(), "market to buy.pdf");
      },
      { "market.order.json": market },
    ),

  "printed, an order is a list without buttons, each sum with its name": () =>
    with_page(
      async (page) => {
        await open_market(page);
        await quoted(page);
        const before = await table(page);
        await page.emulateMedia({ media: "print" });
        assert.deepEqual(await table(page), before);
        const pressed = await page
          .locator("button:visible, .how:visible, .on-paper:visible")
          .evaluateAll((all) => all.filter((one) => !one.matches(".quote-table .line")).map((one) => one.outerHTML));
        assert.deepEqual(pressed, []);
      },
      { "market.order.json": market },
    ),

  "an order is copied, renamed, removed, and each is taken back and done again in one step": () =>
    with_page(
      async (page, serving) => {
        const orders = () =>
          readdirSync(serving.folder)
            .filter((name) => name.endsWith(".order.json"))
            .sort();
        const card = (name) => page.locator(".file b", { hasText: name });
        await to(page, "Orders");
        assert.match(await page.locator(".file").innerText(), /Market\n72 pieces, due 20 Dec 2026/);
        await page.getByRole("button", { name: "Name, note, copy or remove: Market", exact: true }).click();
        await press(page, "Copy");
        await card("Market, copy").waitFor();
        await page.waitForFunction(() => document.querySelector("#list-name")?.value === "Market, copy");
        const copy = serving.file("market_copy.order.json");
        assert.notEqual(copy.id, market.id);
        assert.deepEqual({ ...copy, id: market.id, for: "Market" }, market);
        await page.locator("#list-name").fill("Shop");
        await field(page, "Name of the file").fill("shop");
        await press(page, "Save");
        await card("Shop").waitFor();
        // The name in it is written before the file's own name.
        for (let i = 0; i < 50 && !orders().includes("shop.order.json"); ++i) await page.waitForTimeout(100);
        assert.deepEqual(orders(), ["market.order.json", "shop.order.json"]);
        await page.locator("#list-name").waitFor({ state: "detached" });
        await press(page, "Name, note, copy or remove: Shop");
        await press(page, "Remove");
        await card("Shop").waitFor({ state: "detached" });
        const undo = page.locator(".steps button", { hasText: "Undo" });
        const redo = page.locator(".steps button", { hasText: "Redo" });
        await undo.click();
        await card("Shop").waitFor();
        await undo.click();
        await card("Market, copy").waitFor();
        await undo.click();
        await card("Market, copy").waitFor({ state: "detached" });
        assert.deepEqual(orders(), ["market.order.json"]);
        await redo.click();
        await card("Market, copy").waitFor();
        await redo.click();
        await card("Shop").waitFor();
        await redo.click();
        await card("Shop").waitFor({ state: "detached" });
        assert.ok(await redo.isDisabled());
        assert.deepEqual(orders(), ["market.order.json"]);
        assert.ok(!existsSync(join(serving.folder, "shop.order.json")));
      },
      { "market.order.json": market },
    ),

  "lines with one word are poured together, and the page says of what base and how much": () =>
    with_page(
      async (page, serving) => {
        await open_market(page);
        await quoted(page);
        for (const name of ["Spring cups, twisted", "Second"])
          await line(page, name).getByLabel("Poured with others").fill("A");
        await page.locator(".quote .limits", { hasText: "Poured together (A)" }).waitFor();
        await saved(page);
        await quoted(page);
        assert.deepEqual(
          serving.file("market.order.json").lines.map(({ together }) => together),
          ["A", "A"],
        );
        const answer = serving.printed("quote", "market.order.json");
        const [{ make_g, formula }] = answer.times[0].together;
        assert.deepEqual(await table(page), told(answer));
        const words = await page.locator(".quote .limits").innerText();
        assert.ok(
          words.includes(`Spring cups, twisted and Second from one base, "${formula}", ${make_g.toFixed(1)} g`),
          words,
        );
        await check_access(page, "lines poured together");
        await line(page, "Second").getByLabel("Poured with others").fill("");
        await saved(page);
        assert.deepEqual(serving.file("market.order.json").lines[1], market.lines[1]);
      },
      { "market.order.json": market },
    ),

  "a run that an order names is not removed unasked, and renamed it is named anew": () =>
    with_page(
      async (page, serving) => {
        await open_market(page);
        await to(page, "Runs");
        await press(page, "Name, note, copy or remove: Second");
        await page.getByText("Used by Market.").waitFor();
        await field(page, "Name of the file").fill("other");
        await press(page, "Save");
        await page.locator(".file-name", { hasText: "other.run.json" }).waitFor();
        assert.equal(serving.file("market.order.json").lines[1].run, "other.run.json");
        await open_market(page);
        await line(page, "Second").getByLabel("Pieces").fill("50");
        await saved(page);
        assert.deepEqual(serving.file("market.order.json").lines[1], { run: "other.run.json", pieces: 50 });
        assert.equal(await page.locator(".banner").count(), 0);
      },
      { "market.order.json": market },
    ),

  "on a phone an order stands within its width": () =>
    with_page(
      async (page) => {
        await open_market(page);
        await quoted(page);
        assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), 390);
        for (const one of await page.locator(".rail-top button:visible").all()) {
          const { width, height } = await one.boundingBox();
          assert.ok(width >= 43.9 && height >= 43.9, `${await one.innerText()}: ${width} x ${height}`);
        }
        await check_access(page, "an order on a phone");
        await page.locator(".next-units", { hasText: "Units: both" }).click();
        await page.locator(".next-units", { hasText: "Units: oz" }).waitFor();
      },
      { "market.order.json": market },
      { width: 390, height: 844 },
    ),
});

await chromium.close();
