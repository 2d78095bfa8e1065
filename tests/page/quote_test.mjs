// What a piece costs and what to ask for it: the page's figures are those of the command line, for several numbers of
// pieces and by each way of selling; and what a studio says of money, typed through its forms.
import assert from "node:assert/strict";
import { browser, check_access, examples, on_page, run, settled, to } from "./bench.mjs";

const chromium = await browser();
const spring = "spring_cups.run.json";
const formulas = ["meadow_base.formula.json", "cloud_topping.formula.json"];
const sections = {
  schema: "brimwright.studio/1",
  currency: "EUR",
  prices: { "label paper": { paid: "8.00", for: "1 kg" } },
  packaging: [{ material: "label paper", each_piece: "2 g" }],
  work: { paid_an_hour: "24.00", each_batch: "90 min", each_piece_packed: "90 s" },
  tax: { rate: "20 %", prices_paid: "with tax", prices_asked: "with tax" },
  fees: { of_price: "6 %", each_order: "0.40" },
};
const ways = { retail: { margin: "40 %" }, wholesale: { markup: "25 %" }, fair: { price: "3.00" } };

const with_page = (test, studio, more = {}) =>
  on_page(chromium, test, {
    viewport: { width: 1180, height: 820 },
    files: { ...examples(spring, ...formulas), ...(studio ? { "studio.json": studio } : {}) },
    ...more,
  });
const field = (page, label) => page.getByLabel(label, { exact: true });
const press = (page, name) => page.getByRole("button", { name, exact: true }).click();

/** The figures of each row of the table, by its name; of a way of selling with its name before. */
const table = (page) =>
  page.locator(".quote-table").evaluate((node) => {
    let title = "";
    return Object.fromEntries(
      [...node.rows].flatMap((row) => {
        const name = row.cells[0].innerText.split(/\n| \?$/)[0].trim(); // without its buttons
        if (row.matches(".group")) title = name;
        if (row.matches(".group, .opened")) return [];
        const under = title === "A piece costs" || !title ? name : `${title.split(",")[0].toLowerCase()}: ${name}`;
        return [[under, [...row.cells].slice(1).map((cell) => cell.innerText.split("\n")[0])]];
      }),
    );
  });

const per_cent = (share) => `${Number(share.toFixed(1))} %`;

/** The same of an answer. */
function told({ numbers }) {
  const all = (tell) => numbers.map(tell).map(String);
  const rows = { "Pieces to sell": all(({ sell }) => sell), "to make": all(({ make }) => make) };
  for (const name of ["fillings", "batches"]) rows[name] = all((one) => one[name]);
  numbers[0].parts.forEach(({ part }, k) => (rows[part] = all(({ parts }) => parts[k].each)));
  rows["Cost of a piece"] = all(({ cost_each }) => cost_each);
  rows["The whole run"] = all(({ cost }) => cost);
  numbers[0].prices.forEach(({ way }, k) => {
    const of = (tell) => all(({ prices }) => tell(prices[k]));
    rows[`${way}: Ask, with tax`] = of(({ ask }) => ask);
    rows[`${way}: tax in it`] = of(({ tax }) => tax);
    rows[`${way}: fees`] = of(({ fees }) => fees);
    rows[`${way}: left for you`] = of(({ profit }) => profit);
    rows[`${way}: margin, of the price`] = of((one) => per_cent(one.margin_percent));
    rows[`${way}: markup, on the cost`] = of((one) => per_cent(one.markup_percent));
  });
  return rows;
}

async function quoted(page) {
  await page.locator(".quote-table:not(.old)").waitFor();
  await settled(page);
}

/** Numbers are typed, and the answer to them stands there. */
async function ask_for(page, typed, last) {
  await field(page, "Numbers of pieces").fill(typed);
  await page.locator(".quote-table thead th", { hasText: new RegExp(`^${last}$`) }).waitFor();
  await quoted(page);
}

await run({
  "costs and prices for several numbers are those of the command line, and a price below cost is shouted": () =>
    with_page(
      async (page, serving) => {
        await to(page, "Piece");
        await quoted(page);
        assert.deepEqual(await table(page), told(serving.printed("quote", spring))); // the run's own number
        await ask_for(page, "12, 24 48", 48);
        const answer = serving.printed("quote", spring, "--sell", "12,24,48");
        assert.deepEqual(await table(page), told(answer));
        const { way } = answer.numbers[0].prices.find((one) => one.is_below_cost);
        assert.match(await page.locator(".below-cost").innerText(), new RegExp(`below cost ${way}.*12, 24, 48`, "i"));
        await page.locator(".quote summary").click();
        const worth = await page.locator(".worth-making").innerText();
        const { sell, begins, more } = answer.steps[0];
        assert.ok(worth.includes(`${sell}: ${begins}, ${more} EUR more`) && worth.includes(answer.gaps[0].why));

        await page.getByRole("button", { name: /^Work/ }).click();
        const working = await page.locator(".quote .sum").first().innerText();
        for (const { cost, how } of answer.numbers[0].items.filter(({ part }) => part === "Work"))
          assert.ok(working.includes(how) && working.includes(cost), working);
        await check_access(page, "what it costs");
        assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), 390);

        await page.reload(); // numbers are remembered
        await ask_for(page, await field(page, "Numbers of pieces").inputValue(), 48);
        assert.deepEqual(await table(page), told(answer));
      },
      { ...sections, asking: ways },
      { begin: (page) => page.setViewportSize({ width: 390, height: 844 }) },
    ),

  "without a way of selling a price is asked for the moment, and what is wrong is told at its place": () =>
    with_page(async (page, serving) => {
      await to(page, "Piece");
      await quoted(page);
      await press(page, "By a markup");
      await field(page, "Markup, on the cost").fill("30");
      await page.locator(".quote-table .way").waitFor();
      await quoted(page);
      assert.deepEqual(await table(page), told(serving.printed("quote", spring, "--markup", "30 %")));
      await press(page, "By a margin");
      await field(page, "Margin, of the price").fill("120");
      await page.locator("#quote-figure-said.complaint").waitFor();
      assert.match(await page.locator("#quote-figure-said").innerText(), /leaves no cost; give a margin below 100 %/);
      await page.locator(".quote-table.old").waitFor();
      await field(page, "Numbers of pieces").fill("3");
      await field(page, "Margin, of the price").fill("30");
      await page.locator(".quote .alarm", { hasText: "needs as much" }).waitFor(); // the whisk's
      await check_access(page, "a quote that is refused");
    }, sections),

  "what has no price is named, and then there is none to ask": () =>
    with_page(
      async (page) => {
        await to(page, "Piece");
        await quoted(page);
        assert.match(await page.locator(".quote .alarm").innerText(), /Unpriced.*label paper/);
        assert.equal(await page.locator(".quote-table .ask").count(), 0);
        assert.deepEqual((await table(page)).Packaging, ["unpriced"]);
      },
      { ...sections, prices: undefined, asking: ways },
    ),
});

await chromium.close();
