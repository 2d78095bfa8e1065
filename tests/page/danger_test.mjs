// What could make a soap that burns: told first and red on every view, never by colour alone, and weighed never too heavy.
import assert from "node:assert/strict";
import {
  browser,
  check_access,
  check_tablet,
  examples,
  first_batch,
  on_page,
  opened,
  run,
  settled,
  tablet,
  to,
} from "./bench.mjs";

const chromium = await browser();
const gram_per_ounce = 28.349523125; // international avoirdupois ounce, exact by definition
const example = [
  "spring_cups.run.json",
  "meadow_base.formula.json",
  "cloud_topping.formula.json",
  "studio.fats.json",
  "studio.tips.json",
];

/** A folder of her own with the example in it, changed. */
function with_page(change, test, viewport) {
  const files = examples(...example);
  change(files);
  return on_page(chromium, test, { files, viewport });
}

const as_it_is = () => undefined;
/** No fat is left over at all: every other lot of olive oil makes it lye-heavy. */
const no_superfat = (files) => (files["meadow_base.formula.json"].superfat = "0 %");

const button = (page, name) => page.getByRole("button", { name, exact: true });
const alert = (page) => page.locator(".foremost [role=alert]");
const to_formula = (page) => button(page, "Change the formula of the base").click();

/** It is told by word and sign, and lies whole within what is seen, wherever one has scrolled to. */
async function check_in_sight(page, view) {
  for (const share of [0, 0.5, 1]) {
    await page.evaluate((part) => window.scrollTo(0, part * document.documentElement.scrollHeight), share);
    const words = await alert(page).innerText();
    assert.match(words, /⚠ DANGER/i, view);
    assert.match(words, /Meadow base/, view);
    const box = await alert(page).boundingBox();
    const { height } = page.viewportSize();
    assert.ok(box.y >= 0 && box.y + box.height <= height, `${view}: at ${share} of its height danger is out of sight`);
    const top = await page.evaluate(
      ([x, y]) => document.elementFromPoint(x, y).closest(".foremost") !== null,
      [box.x + box.width / 2, box.y + box.height / 2],
    );
    assert.ok(top, `${view}: at ${share} of its height something lies over it`);
  }
}

/** The plan as the program gives it, changed on its way to the page. */
async function answered(page, change) {
  await page.route("**/api/plan", async (route) => {
    const answer = await route.fetch();
    if (answer.status() !== 200) return route.fulfill({ response: answer });
    const plan = await answer.json();
    change(plan);
    await route.fulfill({ response: answer, body: JSON.stringify(plan).replaceAll('"-0"', "-0.0") });
  });
}

/** What stands in a row of the lye, in grams and in ounces. */
async function shown(page, name, within) {
  const texts = await page.locator(`${within} .weigh`, { hasText: name }).locator(".amount").allInnerTexts();
  return texts.map((text) => ({ g: Number(/([\d.]+) g/.exec(text)?.[1]), oz: Number(/([\d.]+) oz/.exec(text)?.[1]) }));
}

await run({
  "danger stands first and in sight on the run, in a formula and over the lists": () =>
    with_page(no_superfat, async (page) => {
      await check_in_sight(page, "the run");
      await page.locator(".jug", { hasText: "Lye for the base" }).locator("p.danger").waitFor();
      assert.equal(
        await page.locator(".jug", { hasText: "Lye for the topping" }).locator("p.danger").count(),
        0,
        "it is not the topping's",
      );
      await check_access(page, "danger");
      await to(page, "Cautions");
      await check_in_sight(page, "what to look out for");
      assert.match(await page.locator(".watch li").first().innerText(), /danger/i);
      await check_access(page, "danger among the cautions");
      await to(page, "Set up");
      await to_formula(page);
      await check_in_sight(page, "the formula");
      const field = page.locator("#f-pour-superfat");
      const beside = await field.evaluate(
        (node) => document.getElementById(node.getAttribute("aria-describedby").split(" ").at(-1)).innerText,
      );
      assert.match(beside, /⚠ DANGER/i, "beside the field of the superfat");
      await check_access(page, "danger in a formula");
      await to(page, "Runs");
      await check_in_sight(page, "the list of runs");
      assert.match(await alert(page).innerText(), /In the run "Spring cups/);
      await check_access(page, "danger over the list of runs");
    }),

  "on a tablet danger is marked in the bar at the foot, and covers no field that is typed in": () =>
    with_page(
      no_superfat,
      async (page) => {
        assert.match(await page.locator(".bar button", { hasText: "Cautions" }).innerText(), /⚠ Danger/);
        await check_in_sight(page, "the run on a tablet");
        await check_tablet(page, "danger");
        await to_formula(page);
        await page.locator("#f-pour-superfat").focus();
        const field = await page.locator("#f-pour-superfat").boundingBox();
        const strip = await page.locator(".strip").boundingBox();
        const foremost = await page.locator(".foremost").boundingBox();
        assert.ok(strip.y >= foremost.y + foremost.height - 1, "what comes of it lies beneath the danger");
        assert.ok(field.y >= strip.y + strip.height, "the field lies beneath both");
      },
      tablet,
    ),

  "danger stays while the next answer is awaited, and through a refusal about something else": () =>
    with_page(no_superfat, async (page) => {
      await to_formula(page);
      let let_go;
      const held = new Promise((go) => (let_go = go));
      await page.route("**/api/plan", async (route) => {
        await held;
        await route.continue();
      });
      await page.locator("#f-pour-fats-0-share").fill("35 %");
      await page.waitForTimeout(300);
      assert.match(await alert(page).innerText(), /DANGER/i, "no answer has taken it back");
      let_go();
      await page.locator(".strip .alarm").waitFor();
      await page.locator("#f-pour-superfat").fill("6 %");
      await page.waitForTimeout(300);
      await page.locator(".strip .alarm").waitFor();
      assert.match(await alert(page).innerText(), /DANGER/i, "a refusal takes nothing back");
      await page.locator("#f-pour-fats-0-share").fill("40 %");
      await settled(page);
      await alert(page).waitFor({ state: "detached" });
    }),

  "a soap refused as lye-heavy is told of as danger, and its weights are struck out": () =>
    with_page(as_it_is, async (page) => {
      const refusal = {
        file: "meadow_base.formula.json",
        field: "/superfat",
        problem: "on these scales the batter would be lye-heavy: superfat -0.5 %",
        remedy: "plan a higher superfat",
        line: "",
        lye_heavy: true,
      };
      await page.route("**/api/plan", (route) =>
        route.fulfill({ status: 422, contentType: "application/json", body: JSON.stringify({ complaint: refusal }) }),
      );
      await to_formula(page);
      await page.locator("#f-pour-superfat").fill("1 %");
      await alert(page).filter({ hasText: "superfat -0.5 %" }).waitFor();
      await page.locator(".card p.danger", { hasText: "superfat -0.5 %" }).waitFor();
      assert.equal(await page.locator(".strip dl > div").count(), await page.locator(".strip dl > .old").count());
      await page.unroute("**/api/plan");
      await page.locator("#f-pour-superfat").fill("6 %");
      await settled(page);
      assert.equal(await alert(page).count(), 0);
    }),

  "danger of a formula that lies open by itself is its own, and goes with it": () =>
    with_page(
      (files) =>
        (files["by_itself.formula.json"] = {
          ...files["meadow_base.formula.json"],
          name: "By itself",
          superfat: "0 %",
        }),
      async (page) => {
        assert.equal(await alert(page).count(), 0);
        await to(page, "Formulas");
        await page.getByRole("button", { name: /^By itself/ }).click();
        await settled(page);
        await alert(page).filter({ hasText: "By itself" }).waitFor();
        await page.locator(".card p.danger").waitFor();
        await button(page, "Close the formula").first().click();
        await settled(page);
        assert.equal(await alert(page).count(), 0);
      },
    ),

  "danger comes first, and the rest in the order of the program": () =>
    with_page(as_it_is, async (page, serving) => {
      await answered(page, (plan) => {
        plan.cautions.push({ severity: "danger", topic: "plan", text: "Told last." });
        plan.cautions.splice(1, 0, { severity: "warning", topic: "plan", text: "Told second." });
      });
      await page.getByLabel("Pieces to sell").fill("45");
      await to(page, "Cautions");
      await page.locator(".watch li", { hasText: "Told last." }).waitFor();
      await settled(page);
      const there = await page.locator(".watch > ul > li").allInnerTexts();
      const { cautions } = serving.printed("plan", "spring_cups.run.json", "--sell", "45");
      const loud = cautions.filter((one) => one.severity !== "note").map((one) => one.text);
      assert.deepEqual(
        there.map((text) => text.replace(/^\S+( Danger)? */i, "").trim()),
        ["Told last.", loud[0], "Told second.", ...loud.slice(1)],
      );
    }),

  "a low end of -0.04 % is not shown as 0.0 %": () =>
    with_page(as_it_is, async (page) => {
      await answered(page, (plan) =>
        Object.assign(first_batch(plan).pour.superfat_percent, { effective: 0.04, low: -0.04, likely_low: "-0" }),
      );
      await page.getByLabel("Pieces to sell").fill("45");
      const jug = page.locator(".jug", { hasText: "Lye for the base" });
      await jug.getByText("between -0.04 % and").waitFor();
      await settled(page);
      const words = await jug.innerText();
      assert.match(words, /nineteen batches in twenty between just below 0 % and/);
      assert.match(words, /It may come out lye-heavy/);
      assert.ok(!words.includes("0.0 %"), words);
    }),

  "alkali is shown in no unit and no place heavier than it is weighed": () =>
    with_page(as_it_is, async (page, serving) => {
      await to(page, "Weigh");
      const plan = serving.printed("plan", "spring_cups.run.json");
      const check = async (units) => {
        await button(page, units).click();
        for (const [jug, batter] of [
          ["base", first_batch(plan).pour],
          ["topping", first_batch(plan).pipe],
        ]) {
          const within = `.part-of.${jug} .vessel.lye`;
          const { g } = batter.ingredients.find((one) => one.name.startsWith("NaOH"));
          const all = await shown(page, "NaOH", within);
          assert.ok(all.length, within);
          for (const one of all) {
            if (units !== "oz, in") assert.equal(one.g, g);
            const off = one.oz * gram_per_ounce - g;
            if (units !== "g, mm")
              assert.ok(off <= 1e-6 && off > -0.05, `${one.oz} oz of NaOH is ${off} g off what is weighed`);
          }
        }
      };
      for (const units of ["g, mm", "both", "oz, in"]) await check(units);
      for (const [i, name] of ["pour", "pipe"].entries()) {
        const row = page.locator(".vessel.lye .weigh", { has: page.getByText(/^NaOH/) }).nth(i);
        await row.locator(".ask-how").click();
        await row.locator(".sum .formula").first().waitFor();
        const said = await row.locator(".sum").innerText();
        assert.ok(
          Number(/ = ([\d.]+) g, rounded down/.exec(said)[1]) <=
            first_batch(plan)[name].ingredients.find((one) => one.name.startsWith("NaOH")).g,
          said,
        );
      }
      await to(page, "Set up");
      await to_formula(page);
      const strip = await page.locator(".strip dl > div", { hasText: "NaOH" }).innerText();
      const g = first_batch(plan).pour.ingredients.find((one) => one.name.startsWith("NaOH")).g;
      assert.ok(Number(/([\d.]+) oz/.exec(strip)[1]) * gram_per_ounce <= g + 1e-6, strip);
    }),

  "a scale that reads ounces gets ounces at its step, and grams that can be read": () =>
    with_page(
      (files) =>
        Object.assign(files["spring_cups.run.json"].scales, {
          fine: { step: "0.1 oz", most: "20 oz" },
          large: { step: "0.1 oz", most: "20 lb" },
        }),
      async (page, serving) => {
        await to(page, "Weigh");
        const plan = serving.printed("plan", "spring_cups.run.json");
        for (const [jug, batter] of [
          ["base", "pour"],
          ["topping", "pipe"],
        ])
          for (const name of ["NaOH", "Water"]) {
            const named = page.locator(".name", { hasText: new RegExp(`^\\s*${name}`) });
            const row = page.locator(`.part-of.${jug} .vessel.lye .weigh`, { has: named }).first();
            const text = (await row.locator(".amount").innerText()).replaceAll(/\s+/g, " ").trim();
            const lye = first_batch(plan).weigh_out.find((one) => one.vessel === "lye" && one.batter === batter);
            const { g } = lye.rows.find((one) => one.name.startsWith(name));
            const [, oz, grams] = /^(\d+\.\d) oz (\d+(?:\.\d{1,2})?) g$/.exec(text) ?? assert.fail(`"${text}"`);
            assert.ok(
              Math.abs(Number(oz) * gram_per_ounce - g) < 0.0006,
              `${text}: the program weighs ${g} g, to the milligram`,
            );
            if (name === "NaOH") assert.ok(Number(grams) <= g, `${text}: more than ${g} g`);
            assert.ok(Math.abs(Number(grams) - g) <= 1, text);
          }
      },
    ),

  "water stands before the alkali wherever lye is weighed": () =>
    with_page(
      (files) => {
        const { water, alkali } = files["meadow_base.formula.json"];
        Object.assign(files["cloud_topping.formula.json"], { water, alkali });
        files["spring_cups.run.json"].lye_pot = {};
      },
      async (page) => {
        await to(page, "Weigh");
        const lists = await page
          .locator(".weighing .vessel")
          .evaluateAll((vessels) =>
            vessels
              .map((one) => [...one.querySelectorAll(".weigh .name")].map((name) => name.textContent))
              .filter((names) => names.some((name) => /NaOH/.test(name))),
          );
        assert.ok(lists.length >= 1, "where alkali is weighed");
        for (const names of lists) {
          const [water, alkali] = [
            names.findIndex((one) => /water/i.test(one)),
            names.findIndex((one) => /NaOH/.test(one)),
          ];
          assert.ok(water >= 0 && water < alkali, names.join(", "));
        }
        await to(page, "Set up");
        await to_formula(page);
        const strip = await page.locator(".strip dt").allInnerTexts();
        assert.ok(
          strip.findIndex((one) => one.startsWith("Water")) < strip.findIndex((one) => one.startsWith("NaOH")),
          strip.join(", "),
        );
      },
    ),

  "what is only called water is neither weighed nor explained as the lye's": () =>
    with_page(
      (files) => {
        const base = files["meadow_base.formula.json"];
        base.fragrances[0].name = "Watermelon fragrance";
        base.additives[0].name = "Water lily extract"; // goes into the lye
      },
      async (page) => {
        await to(page, "Weigh");
        const rows = await page.locator(".part-of.base .vessel.lye .weigh .name").allTextContents();
        const place = (name) => rows.findIndex((one) => one.trim().startsWith(name));
        assert.ok(place("Water lily") > 0, `it goes into the lye: ${rows.join(", ")}`);
        const how = async (row) => {
          await row.locator(".ask-how").click();
          await row.locator(".sum .formula").first().waitFor();
          return row.locator(".sum").innerText();
        };
        for (const name of ["Watermelon fragrance", "Water lily extract"]) {
          const working = await how(page.locator(".weighing .weigh", { hasText: name }).first());
          assert.match(working, /rate/, `${name}: ${working}`);
          assert.doesNotMatch(working, /strength|saponification/, `${name}: ${working}`);
        }
        const water = page.locator(".weighing .weigh", {
          has: page.locator(".name", { hasText: /^\s*Water(?! lily|melon)/ }),
        });
        assert.match(await how(water.first()), /strength/);
      },
    ),
});
await chromium.close();
