// When runs and orders are made: the page tells what the command line does, renews it as it is typed, and leads to what is
// missing.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import {
  browser,
  check_access,
  check_tablet,
  examples,
  on_page,
  open_run,
  run,
  saved,
  settled,
  tablet,
  to,
} from "./bench.mjs";

const chromium = await browser();
const bars = "plain_bars.run.json";
const cups = "spring_cups.run.json";
const formulas = ["meadow_base.formula.json", "cloud_topping.formula.json"];
const ids = { [bars]: "5f1d6bb8-7d34-4c8e-9c6f-3a6f1d1f3c21", [cups]: "5f1d6bb8-7d34-4c8e-9c6f-3a6f1d1f3c22" };
const runs = Object.fromEntries(
  Object.entries(examples(bars, cups)).map(([name, { money: _, ...run }]) => [name, { ...run, id: ids[name] }]),
);
const work = { each_batch: "3 h", each_piece_packed: "1 min", each_tray_fill: "10 min" };
const days = { making: { tuesday: "6 h", friday: "6 h" }, pots_owned: 2, bowls_owned: 2, rack_places: 500 };
const studio = { schema: "brimwright.studio/1", days, work };
const market = {
  schema: "brimwright.order/1",
  id: "5f1d6bb8-7d34-4c8e-9c6f-3a6f1d1f3c23",
  for: "Market",
  lines: [
    { run: cups, pieces: 24 },
    { run: bars, pieces: 12 },
  ],
};

const with_page = (test, more = {}, viewport = { width: 1180, height: 820 }) =>
  on_page(chromium, test, {
    viewport,
    files: { ...examples(...formulas), ...runs, "studio.json": studio, "market.order.json": market, ...more },
  });
const field = (page, label) => page.getByLabel(label, { exact: true });
const press = (page, name) => page.getByRole("button", { name, exact: true }).click();

/** As the page writes days, from the calendar alone. */
const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const plain_day = (iso) => {
  const [year, month, day] = iso.split("-").map(Number);
  return `${day} ${months[month - 1]} ${year}`;
};
const weekday = (iso) =>
  `${["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"][new Date(`${iso}T00:00Z`).getUTCDay()]} ${plain_day(iso)}`;
const in_words = (text) => text.replaceAll(/\d{4}-\d\d-\d\d/g, plain_day);
const later = (many) => new Date(Date.now() + many * 86_400_000).toISOString().slice(0, 10);

/** Plain bars in two batches of one day, and a studio that mixes one lye for both. */
function two_batches() {
  const run_of_two = { ...runs[bars], sell: 24, batch: { pieces: 12 }, due: later(80) };
  return [
    { ...run_of_two, pour: { ...run_of_two.pour, moulds_owned: 9 } },
    {
      ...studio,
      days: {
        ...days,
        making: { tuesday: "6 h", friday: "6 h" },
        small_jobs: ["monday", "thursday"],
        one_lye_a_day: { holds: "5 l", pot_tare: "412 g", saves: "2 h" },
      },
      work: { each_batch: "4 h" },
    },
  ];
}

async function told(page) {
  await page.locator(".day-strip").waitFor();
  await settled(page);
  return page.locator(".days").innerText();
}

const of_list = (page) =>
  page.locator(".by-day > li").evaluateAll((all) =>
    all.map((one) => ({
      day: one.querySelector("h3").firstChild.data.trim(),
      acts: [...one.querySelectorAll("ul > li")].map((act) => act.firstChild.nextSibling.data?.trim() ?? act.innerText),
    })),
  );

await run({
  "a run is promised, its days listed and drawn as the command line has them; due day, pieces and making days renew it":
    () =>
      with_page(async (page, serving) => {
        await open_run(page, /^Plain bars/);
        await to(page, "Days");
        const answer = serving.printed("days", bars);
        assert.match(await told(page), new RegExp(`promise it for ${weekday(answer.promise)}`));
        const listed = await page.locator(".by-day").innerText();
        for (const { day, acts } of answer.days) {
          assert.ok(listed.includes(weekday(day)), day);
          for (const { text } of acts) assert.ok(listed.includes(in_words(text)), text);
        }
        assert.equal(await page.locator(".day-strip > svg .mould").count(), answer.batches.length);
        assert.equal(
          await page.locator(".day-strip .used").count(),
          1 + answer.calendar.filter((one) => one.hours_min).length,
        );
        await check_access(page, "the days of a run");

        const due = later(70);
        await field(page, "Due").fill(due);
        await page.locator(".days .when", { hasText: weekday(due) }).waitFor();
        await saved(page);
        const kept = serving.printed("days", bars);
        assert.ok(kept.kept, "it can be kept");
        assert.match(
          await told(page),
          new RegExp(`Begin on ${weekday(kept.latest_start)} at the latest to have 12 pieces`),
        );
        await field(page, "Pieces to sell").fill("24");
        await page.locator(".days .when", { hasText: "24 pieces" }).waitFor();

        await to(page, "Set up");
        await page.getByText("When you work").click();
        await field(page, "Friday").fill("");
        await field(page, "Monday").fill("7");
        await settled(page);
        await to(page, "Days");
        await page.locator(".day-strip").waitFor();
        await page.waitForFunction(() => /Mon \d/.test(document.querySelector(".by-day")?.innerText ?? ""));
        await settled(page);
        assert.deepEqual(serving.file("studio.json").days.making, { tuesday: "6 h", monday: "7 h" });
        const anew = serving.printed("days", bars);
        assert.match(await told(page), new RegExp(`Begin on ${weekday(anew.latest_start)} at the latest`));
      }),

  "what cannot be kept is told with how many are in time, and what would help": () =>
    with_page(async (page, serving) => {
      await open_run(page, /^Plain bars/);
      await to(page, "Days");
      await told(page);
      await field(page, "Pieces to sell").fill("60");
      await field(page, "Due").fill(later(45));
      await page.locator(".days .alarm").waitFor();
      await saved(page);
      await settled(page);
      const answer = serving.printed("days", bars);
      const [{ in_time, pieces, rest_on }] = answer.asked;
      assert.equal(answer.kept, false);
      const words = await told(page);
      assert.match(words, /The due day cannot be kept/);
      assert.ok(words.includes(in_time ? `${in_time} of ${pieces} pieces` : `none of the ${pieces} pieces`), words);
      assert.ok(words.includes(weekday(rest_on)), words);
      for (const { text } of answer.what_if) assert.ok(words.includes(text), text);
      await check_access(page, "a due day that is not kept");
    }),

  "a studio that says nothing of days is asked by one line, and one tap leads to the field": () =>
    with_page(
      async (page, serving) => {
        await open_run(page, /^Plain bars/);
        await to(page, "Days");
        await page.getByText("Your making days are not known yet").waitFor();
        await check_access(page, "no making days");
        await press(page, "To my making days");
        await page.waitForFunction(() => document.activeElement?.id === "f-studio-days-making-monday");
        await page.keyboard.type("6");
        await settled(page);
        await to(page, "Days");
        await page.getByText("How long a batch takes you is not known yet").waitFor();
        await press(page, "To the time of a batch");
        await page.waitForFunction(() => document.activeElement?.id === "f-studio-work-each_batch");
        await page.keyboard.type("90");
        await settled(page);
        await to(page, "Days");
        await told(page);
        const written = serving.file("studio.json");
        assert.deepEqual(written.days, { making: { monday: "6 h" } });
        assert.deepEqual(written.work, { each_batch: "90 min" });
      },
      { "studio.json": { schema: "brimwright.studio/1" } },
    ),

  "an order in a folder without a studio is asked in the same words, and led to a studio that is made": () =>
    on_page(
      chromium,
      async (page, serving) => {
        await to(page, "Orders");
        await page.getByRole("button", { name: /^Market/ }).click();
        await page.locator(".days").getByText("Your making days are not known yet").waitFor();
        assert.doesNotMatch(await page.locator(".days").innerText(), /studio\.json|"days"/);
        await press(page, "To my making days");
        await page.waitForFunction(() => document.activeElement?.id === "f-studio-days-making-monday");
        await page.keyboard.type("6");
        await settled(page);
        await saved(page);
        assert.deepEqual(serving.file("studio.json").days, { making: { monday: "6 h" } });
      },
      { files: { ...examples(...formulas), ...runs, "market.order.json": market } },
    ),

  "a formula without a cure, and a due day that is past, lead to their fields": () => {
    const { cure: _, ...base } = examples(formulas[0])[formulas[0]];
    return with_page(
      async (page) => {
        await open_run(page, /^Plain bars/);
        await to(page, "Days");
        await page.locator(".days .alarm", { hasText: "cure: is missing" }).waitFor();
        await press(page, "Go to the field");
        await page.waitForFunction(() => document.activeElement?.id === "f-pour-cure");
        await page.keyboard.type("35");
        await settled(page);
        await page.goBack();
        await told(page);
        await field(page, "Due").fill(later(-3));
        await page.locator(".days .alarm", { hasText: "a day that is still to come" }).waitFor();
        assert.equal(await field(page, "Due").getAttribute("aria-invalid"), "true");
        await press(page, "Go to the field");
        await page.waitForFunction(() => document.activeElement?.id === "f-run-due");
      },
      { [formulas[0]]: base },
    );
  },

  "days off, days of small jobs and the limits of a day are typed into the studio": () =>
    with_page(async (page, serving) => {
      await open_run(page, /^Plain bars/);
      await to(page, "Set up");
      await page.getByText("When you work").click();
      await press(page, "Saturday");
      await press(page, "Add a day off");
      await field(page, "First day off").fill("2026-12-24");
      await field(page, "Last, if there are several").fill("2027-01-02");
      await field(page, "Pieces that can cure at once").fill("240");
      await field(page, "Decorations cast beforehand by at most").fill("7");
      await field(page, "Uses of each on a day").fill("2");
      await press(page, "Make one pot of lye solution for a day's batches");
      await field(page, "Pot holds").fill("4");
      await field(page, "Each further batch takes less by").fill("20");
      await settled(page);
      assert.deepEqual(serving.file("studio.json").days, {
        ...days,
        small_jobs: ["saturday"],
        off: ["2026-12-24/2027-01-02"],
        rack_places: 240,
        cast_beforehand: "7 days",
        used_a_day: 2,
        one_lye_a_day: { holds: "4 l", saves: "20 min" },
      });
      await check_access(page, "the form of making days");
      await field(page, "Last, if there are several").fill("2026-12-01");
      await page.locator(".complaint", { hasText: "ends before it begins" }).waitFor();
      await field(page, "Last, if there are several").fill("");
      await settled(page);
      assert.deepEqual(serving.file("studio.json").days.off, ["2026-12-24"]);
    }),

  "a lye for several batches of a day is told as it is weighed, and its danger before all else": () => {
    const lean = { ...examples(formulas[0])[formulas[0]], name: "Lean", superfat: "0.5 %" };
    const [run_of_two, shared] = two_batches();
    return with_page(
      async (page, serving) => {
        await open_run(page, /^Plain bars/);
        await to(page, "Days");
        const words = await told(page);
        const [lye] = serving.printed("days", bars).lyes;
        assert.ok(words.includes(`made on the evening of ${weekday(lye.made)}`), words);
        const rows = await page.locator(".days .figures").first().innerText();
        for (const text of [
          lye.pot.water_g_text,
          lye.pot.alkalis[0].g_text,
          lye.pot.lye_g_text,
          lye.pot.shares[1].lye_g_text,
        ])
          assert.ok(rows.includes(`${text} g`), `${text} in ${rows}`);
        const danger = lye.cautions.find(({ severity }) => severity === "danger").text;
        const first = await page.locator(".days > div > *").first().innerText();
        assert.ok(/danger/i.test(first) && first.includes(in_words(danger)), first);
        assert.equal(
          await page.locator(".day-strip > svg .chill").count(),
          lye.batches.length,
          "a ring for each batch",
        );
        await check_access(page, "a lye for several batches");
      },
      {
        [formulas[0]]: lean,
        [bars]: run_of_two,
        "studio.json": shared,
      },
    );
  },

  "beside the lye of a batch stands what comes out of the day's pot instead, or that it is mixed by itself":
    async () => {
      const [run_of_two, shared] = two_batches();
      const files = (of_lye) => ({
        [bars]: run_of_two,
        "studio.json": { ...shared, days: { ...shared.days, one_lye_a_day: of_lye } },
      });
      const pot = (page) => page.locator(".vessel.lye .day-pot");
      await with_page(
        async (page, serving) => {
          await open_run(page, /^Plain bars/);
          const [lye] = serving.printed("days", bars).lyes;
          await pot(page)
            .filter({ hasText: `evening of ${weekday(lye.made)}` })
            .waitFor();
          assert.match(await pot(page).innerText(), /weigh no water and no alkali here: one or the other, never both/);
          for (const batch of [0, 1]) {
            await page.locator(".weighing-head .choice button").nth(batch).click();
            const share = lye.pot.shares[lye.batches[batch].shares[0]];
            await pot(page)
              .filter({ hasText: `batch ${batch + 1}:` })
              .waitFor();
            assert.ok((await pot(page).innerText()).includes(`${share.lye_g_text} g`), share.lye_g_text);
          }
          await check_access(page, "a batch whose lye may come out of a day's pot");
          await pot(page)
            .getByRole("link", { name: /^To Days/ })
            .click();
          await page.getByRole("heading", { name: "When it is made" }).waitFor();
          await page.setViewportSize(tablet);
          await to(page, "Weigh");
          await pot(page).filter({ hasText: "evening of" }).waitFor();
          await check_tablet(page, "a batch whose lye may come out of a day's pot");
        },
        files({ holds: "5 l", saves: "2 h" }),
      );
      await with_page(
        async (page) => {
          await open_run(page, /^Plain bars/);
          await pot(page).filter({ hasText: "does not hold that of two" }).waitFor();
          assert.doesNotMatch(await pot(page).innerText(), /weigh no water/);
        },
        files({ holds: "700 ml", saves: "2 h" }),
      );
      await with_page(async (page) => {
        await open_run(page, /^Plain bars/);
        await page.locator(".vessel.lye .weigh").first().waitFor();
        assert.equal(await page.locator(".day-pot").count(), 0, "each batch has its own lye there");
      });
    },

  "what the studio does not say of its days is told in words, and each leads to its field": () => {
    const { rack_places: _, ...little } = days;
    return with_page(
      async (page, serving) => {
        await open_run(page, /^Plain bars/);
        await to(page, "Days");
        await told(page);
        const notes = await page.locator(".day-note").allInnerTexts();
        assert.ok(notes.length > 1 && notes.every((one) => !/\w_\w|\("/.test(one)), notes.join("\n"));
        assert.equal(notes.length, serving.printed("days", bars).notes.length);
        const rack = page.locator(".day-note", { hasText: "how many pieces its rack holds" });
        await rack.getByRole("button", { name: "Say it" }).click();
        await page.waitForFunction(() => document.activeElement?.id === "f-studio-days-rack_places");
      },
      { "studio.json": { ...studio, days: little } },
    );
  },

  "a batch that no day takes leads to what the studio could say otherwise, in words without keys": () =>
    with_page(
      async (page) => {
        await open_run(page, /^Plain bars/);
        await to(page, "Days");
        const alarm = page.locator(".days .alarm", { hasText: "more than the 10 places of the curing rack" });
        await alarm.waitFor();
        assert.doesNotMatch(await alarm.innerText(), /\w_\w|studio\.json/);
        await check_access(page, "no day takes it");
        await press(page, "Go to the field");
        await page.waitForFunction(() => document.activeElement?.id === "f-studio-days-rack_places");
      },
      { "studio.json": { ...studio, days: { ...days, rack_places: 10 } } },
    ),

  "a calendar that was exported before is taken into account: what the days have no more is cancelled": () =>
    with_page(async (page, serving) => {
      await open_run(page, /^Plain bars/);
      await field(page, "Pieces to sell").fill("60");
      await saved(page);
      const more = serving.printed("days", bars);
      serving.printed("days", bars, "--ics", "before.ics");
      await field(page, "Pieces to sell").fill("12");
      await settled(page);
      await saved(page);
      await to(page, "Days");
      await told(page);
      const calendar = field(page, "The calendar that you exported before (.ics)");
      await calendar.setInputFiles({
        name: "other.ics",
        mimeType: "text/calendar",
        buffer: Buffer.from("BEGIN:VCARD"),
      });
      await page.getByText("The calendar file will cancel what only other.ics has").waitFor();
      await press(page, "Calendar file (.ics)");
      await page.locator(".on-paper", { hasText: "is not a calendar that this program wrote" }).waitFor();
      await press(page, "Leave other.ics out");
      await calendar.setInputFiles(`${serving.folder}/before.ics`);
      await page.getByText("The calendar file will cancel what only before.ics has").waitFor();
      await check_access(page, "a calendar that was exported before");
      const [download] = await Promise.all([page.waitForEvent("download"), press(page, "Calendar file (.ics)")]);
      const entries = (text) => text.replaceAll(/^DTSTAMP:.*$/gm, "");
      const there = entries(readFileSync(await download.path(), "utf8"));
      const fewer = serving.printed("days", bars, "--ics", "now.ics", "--since", "before.ics");
      assert.equal(there, entries(readFileSync(`${serving.folder}/now.ics`, "utf8")));
      const acts = ({ days: all }) => all.flatMap(({ acts: one }) => one.map(({ key }) => key));
      const gone = acts(more).filter((key) => !acts(fewer).includes(key));
      assert.ok(gone.length > 0);
      assert.equal(there.match(/^STATUS:CANCELLED/gm)?.length, gone.length);
    }),

  "an order has its days, its calendar file is the command line's, and the sheet begins with them": () =>
    with_page(async (page, serving) => {
      await to(page, "Orders");
      await page.getByRole("button", { name: /^Market/ }).click();
      const answer = serving.printed("days", "market.order.json");
      assert.match(await told(page), new RegExp(`promise it for ${weekday(answer.promise)}`));
      await field(page, "Due").fill(later(80));
      await page.locator(".days .when", { hasText: "36 pieces" }).waitFor();
      await page.waitForFunction(() => /^Saved in/.test(document.querySelector(".saving")?.textContent ?? ""));
      await told(page);
      const [download] = await Promise.all([page.waitForEvent("download"), press(page, "Calendar file (.ics)")]);
      assert.equal(download.suggestedFilename(), "market days.ics");
      serving.printed("days", "market.order.json", "--ics", "there.ics");
      const entries = (text) => text.replaceAll(/^DTSTAMP:.*$/gm, "");
      const calendar = readFileSync(await download.path(), "utf8");
      assert.match(calendar, /^BEGIN:VCALENDAR\r\n/);
      assert.equal(entries(calendar), entries(readFileSync(`${serving.folder}/there.ics`, "utf8")));
      const [paper] = await Promise.all([
        page.context().waitForEvent("page"),
        press(page, "Days and bench sheet, to print"),
      ]);
      await paper.waitForLoadState();
      assert.match(await paper.locator("body").innerText(), /Days: Market/);
      await paper.close();
    }),

  "an order whose studio says nothing of days leads to it by one of its runs": () =>
    with_page(
      async (page) => {
        await to(page, "Orders");
        await page.getByRole("button", { name: /^Market/ }).click();
        await press(page, "To my making days");
        await page.waitForFunction(() => document.activeElement?.id === "f-studio-days-making-monday");
      },
      { "studio.json": { schema: "brimwright.studio/1" } },
    ),

  "nothing of it is too small for a finger, nor sticks out": () =>
    with_page(
      async (page) => {
        await open_run(page, /^Spring cups/);
        await to(page, "Days");
        await told(page);
        await check_tablet(page, "days");
        await page.setViewportSize({ width: 390, height: 844 });
        assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), 390);
        const narrow = await page
          .locator(".bar button")
          .evaluateAll((all) =>
            all.filter((one) => one.getBoundingClientRect().width < 43.9).map((one) => one.innerText),
          );
        assert.deepEqual(narrow, []);
      },
      {},
      tablet,
    ),
});
await chromium.close();
