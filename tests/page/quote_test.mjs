// What a piece costs and what to ask for it: the page's figures are those of the command line, for several numbers of
// pieces and by each way of selling; and what a studio says of money, typed through its forms.
import assert from "node:assert/strict";
import {
  browser,
  check_access,
  check_tablet,
  examples,
  fill,
  on_page,
  run,
  saved,
  settled,
  tablet,
  to,
} from "./bench.mjs";

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

// The studio has the prices of the run, which says nothing of money.
const { money, ...bare_run } = examples(spring)[spring];
const prices_only = { schema: "brimwright.studio/1", currency: money.currency, prices: money.prices };

/** The studio's file, once it holds what is typed. */
async function written(page, serving) {
  await settled(page);
  await saved(page);
  return serving.file("studio.json");
}

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
  rows["To lay out now, in whole packs"] = all(({ cash }) => cash.total ?? "nothing");
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
        for (const summary of await page.locator(".worth-making summary").all()) await summary.click();
        const worth = await page.locator(".worth-making").innerText();
        const { sell, begins, more } = answer.steps[0];
        assert.ok(worth.includes(`${sell}: ${begins}, ${more} EUR more`) && worth.includes(answer.gaps[0].why));
        const pack = answer.pack_steps[0];
        assert.ok(worth.includes(`${pack.sell}: ${pack.shown_as}, ${pack.more} EUR more to lay out`), worth);

        await page.getByRole("button", { name: /^Work/ }).click();
        const working = await page.locator(".quote .sum").first().innerText();
        for (const { cost, how } of answer.numbers[0].items.filter(({ part }) => part === "Work"))
          assert.ok(working.includes(how) && working.includes(cost), working);
        await page.getByRole("button", { name: /^To lay out now/ }).click();
        const laid_out = await page.locator(".quote .opened").last().innerText();
        const { packs, left } = answer.numbers[0].cash;
        assert.ok(
          packs.length && packs.every(({ shown_as, sum }) => laid_out.includes(shown_as) && laid_out.includes(sum)),
        );
        assert.ok(left.every((one) => laid_out.includes(one.left)));

        const picture = page.locator("cost-picture img"); // as the command line draws it
        await page.locator("cost-picture").scrollIntoViewIfNeeded();
        await picture.waitFor();
        await page.waitForFunction(() => document.querySelector("cost-picture img").naturalWidth > 300);
        await page.locator(".cost-picture summary").click();
        const figures = await page.locator(".cost-picture tbody").innerText();
        for (const at of [12, 24, 48, answer.steps[0].sell]) {
          const { each } = answer.costs.find((one) => one.sell === at);
          assert.match(figures, new RegExp(`^${at}\\s+${each.replace(".", "\\.")}$`, "m"));
        }
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
      await page.locator("#quote-numbers-said.complaint", { hasText: "needs as much" }).waitFor(); // the whisk's
      assert.equal(await page.locator(".quote .alarm").count(), 0); // the run's own number has nothing wrong
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

  "a run is packed otherwise than the studio packs, or not at all, and its quote counts that": () =>
    with_page(async (page, serving) => {
      const packaging = async (chosen, figures) => {
        await to(page, "Set up");
        if (chosen) await press(page.getByRole("group", { name: "What goes round each piece" }), chosen);
        await figures?.();
        await settled(page);
        await saved(page);
        await to(page, "Piece");
        await quoted(page);
        const answer = serving.printed("quote", spring);
        assert.deepEqual(await table(page), told(answer));
        return [(await table(page)).Packaging?.[0], answer.remarks ?? [], serving.file(spring).packaging];
      };
      const [as_studio, , key] = await packaging();
      assert.equal(key, undefined);
      await to(page, "Set up");
      await page
        .locator("summary", { hasText: /^Packaging/ })
        .first()
        .click();
      const [own, remarks, typed] = await packaging("Of this run's own", async () => {
        await field(page, "Material 1").fill("label paper");
        await field(page, "Of it, each piece 1").fill("20 g");
      });
      assert.deepEqual(typed, [{ material: "label paper", each_piece: "20 g" }]);
      assert.ok(Number(own) > Number(as_studio), `${own} ${as_studio}`);
      assert.ok(
        remarks.some((one) => one.includes("in place of the studio's")),
        String(remarks),
      );
      await check_access(page, "a run's own packaging");
      const [, , none] = await packaging("Nothing");
      assert.deepEqual(none, []);
      const [back, , gone] = await packaging("As the studio packs");
      assert.deepEqual([back, gone], [as_studio, undefined]);
    }, sections),

  "a price that only the run says becomes the first of the studio's packs, and one step takes that back": () =>
    with_page(
      async (page, serving) => {
        const { olive } = money.prices;
        await press(page, "Another pack size of Olive oil");
        const { packs, currency } = await written(page, serving);
        assert.deepEqual([packs.olive[0], currency], [{ holds: olive.for, paid: olive.paid }, money.currency]);
        assert.equal(serving.file(spring).money.prices.olive, undefined);
        await page.getByText("Olive oil: by its 2 packs").waitFor();
        await press(page, "Undo");
        assert.deepEqual(await written(page, serving), { schema: "brimwright.studio/1" });
        assert.deepEqual(serving.file(spring).money.prices.olive, olive);
      },
      { schema: "brimwright.studio/1" },
    ),

  "what a studio says of money is typed through its forms, and read by the command line": () =>
    with_page(
      async (page, serving) => {
        const money = page.locator(".money");
        const fold = (name) => money.locator("summary", { hasText: name }).click();
        const group = (name) => page.getByRole("group", { name, exact: true });
        await press(page, "Another pack size of Olive oil");
        assert.equal((await written(page, serving)).packs.olive.length, 2);
        await press(page, "Undo"); // one step
        assert.deepEqual(await written(page, serving), prices_only);

        await fold("Sellers");
        await field(page, "Another seller, by name").fill("Mill");
        await press(page, "Add the seller");
        await fill(page, { "Postage of an order": "6.90", "Free from": "80", "From ordering to having it": "3" });
        await press(page, "Another pack size of Olive oil");
        await fill(group("Pack 2 of Olive oil"), { "One pack holds": "1 kg", "Paid for it": "9.90" });
        await fill(group("Pack 2 of Olive oil"), { "Day of the price": "2026-10-01" });
        await group("Pack 2 of Olive oil").getByLabel("From").selectOption("Mill");
        await fill(group("Packs of Olive oil"), { "Lost beside the batch": "2" });
        await fold("On the shelf");
        await group("Which material stands on the shelf?").getByRole("button", { name: "Coconut oil" }).click();
        await field(money, "Coconut oil").fill("3.2 kg");
        await fold("Packaging");
        await field(group("What goes round a piece?"), "Find it by its name").fill("label paper");
        await page.keyboard.press("Enter");
        await field(page, "label paper, each piece").fill("2 g");
        await press(page, "Say its price: label paper");
        await fill(group("Pack 1 of label paper"), { "One pack holds": "1 kg", "Paid for it": "8.00" });
        await fold("Work");
        await fill(money, { "Paid an hour": "24", "Each batch": "90", "Each piece packed": "40" });
        await fold("Overhead");
        await field(money, "Each batch").last().fill("3.00");
        await fold("Tax on sales");
        await press(page, "I charge tax");
        await field(page, "Rate").fill("20");
        await group(/^The prices you pay are/)
          .getByRole("button", { name: "With tax", exact: true })
          .click();
        await group(/^The prices you ask are/)
          .getByRole("button", { name: "With tax", exact: true })
          .click();
        await fold("Fees of selling");
        await fill(money, { "Of what the buyer pays": "6.5", "Each order": "0.40" });
        await fold("Ways of selling");
        for (const [name, by, label, value] of [
          ["retail", "A margin", "Margin, of the price", "40"],
          ["fair", "A price as set", "Price of a piece", "6.50"],
        ]) {
          await field(page, "Another way, such as retail").fill(name);
          await press(page, "Add the way");
          await group(name).getByRole("button", { name: by, exact: true }).click();
          await field(group(name), label).fill(value);
        }
        await press(page, "Add an ending");
        await field(page, "Ending 1").fill("0.90");
        const retail = group("retail").getByLabel("What you call it");
        await retail.fill("fair");
        await page.keyboard.press("Enter");
        await page.getByText("Another is called fair already").waitFor();
        await group("retail").getByLabel("What you call it").fill("shop");
        await page.keyboard.press("Enter");
        await group("shop").waitFor();
        await group("Mill").getByLabel("Seller's name").fill("Oil mill");
        await page.keyboard.press("Enter");
        await group("Oil mill").waitFor();
        const { olive, ...others } = prices_only.prices;
        assert.deepEqual(await written(page, serving), {
          ...prices_only,
          prices: others,
          sellers: { "Oil mill": { postage: "6.90", postage_free_from: "80", lead_time: "3 days" } },
          packs: {
            olive: [
              { holds: olive.for, paid: olive.paid },
              { holds: "1 kg", paid: "9.90", as_of: "2026-10-01", from: "Oil mill" },
            ],
            "label paper": [{ holds: "1 kg", paid: "8.00" }],
          },
          waste: { olive: "2 %" },
          have: { coconut: "3.2 kg" },
          packaging: [{ material: "label paper", each_piece: "2 g" }],
          work: { paid_an_hour: "24", each_batch: "90 min", each_piece_packed: "40 s" },
          overhead: { each_batch: "3.00" },
          tax: { rate: "20 %", prices_paid: "with tax", prices_asked: "with tax" },
          fees: { of_price: "6.5 %", each_order: "0.40" },
          asking: { shop: { margin: "40 %" }, fair: { price: "6.50" } },
          price_endings: ["0.90"],
        });
        assert.ok(serving.printed("buy", spring).schema);
        await check_access(page, "the studio's forms of money");
        await page.setViewportSize(tablet);
        await check_tablet(page, "the studio's forms of money");
        await to(page, "Piece");
        await quoted(page);
        assert.deepEqual(await table(page), told(serving.printed("quote", spring)));

        await to(page, "Set up");
        await field(money, "Each batch").first().fill("soon"); // what only a quote reads
        await money.locator(".field.wants .complaint", { hasText: "soon" }).waitFor();
      },
      prices_only,
      { files: { ...examples(...formulas), [spring]: bare_run, "studio.json": prices_only } },
    ),
});

await chromium.close();
