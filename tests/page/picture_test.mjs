// The README's picture of the page shows today's page: of the same size, with the same words. It is made anew where
// PICTURE=write is set; how fonts draw it differs from one computer to the next, and is not compared.
import assert from "node:assert/strict";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { deflateSync } from "node:zlib";
import { browser, on_page, root, run, settled, to } from "./bench.mjs";

const chromium = await browser();
const picture = join(root, ".pictures", "page.png");
const viewport = { width: 1180, height: 820 };
const signature = Buffer.from("\x89PNG\r\n\x1a\n", "latin1");

/** PNG (ISO/IEC 15948), 5.3: length, kind, data and a check. */
function* chunks(png) {
  for (let at = signature.length; at < png.length; at += png.readUInt32BE(at) + 12)
    yield [png.toString("latin1", at + 4, at + 8), png.subarray(at + 8, at + 8 + png.readUInt32BE(at))];
}

function chunk(kind, data) {
  const told = Buffer.concat([Buffer.from(kind), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(told));
  return Buffer.concat([length, told, check]);
}

/** Annex D, bit by bit. */
function crc32(bytes) {
  let rest = ~0;
  for (const byte of bytes) {
    rest ^= byte;
    for (let bit = 0; bit < 8; ++bit) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  }
  return ~rest >>> 0;
}

/** The colours that are seen most, and of which of them each dot is, or is nearest to. */
const few_colours = (page, png) =>
  page.evaluate(async (base64) => {
    const image = await createImageBitmap(await (await fetch(`data:image/png;base64,${base64}`)).blob());
    const canvas = new OffscreenCanvas(image.width, image.height).getContext("2d");
    canvas.drawImage(image, 0, 0);
    const { data } = canvas.getImageData(0, 0, image.width, image.height);
    const colours = Array.from({ length: data.length / 4 }, (_, i) =>
      [0, 1, 2].reduce((all, channel) => all * 256 + data[4 * i + channel], 0),
    );
    const seen = new Map();
    for (const one of colours) seen.set(one, (seen.get(one) ?? 0) + 1);
    const palette = [...seen.entries()].sort((a, b) => b[1] - a[1] || a[0] - b[0]).slice(0, 64);
    const channels = (one) => [one >> 16, (one >> 8) & 255, one & 255];
    const far = (a, b) => channels(a).reduce((sum, value, i) => sum + (value - channels(b)[i]) ** 2, 0);
    const nearest = (one) =>
      palette.reduce((best, [other], i) => (far(one, other) < far(one, palette[best][0]) ? i : best), 0);
    const places = new Map([...seen.keys()].map((one) => [one, nearest(one)]));
    return { palette: palette.flatMap(([one]) => channels(one)), dots: colours.map((one) => places.get(one)) };
  }, png.toString("base64"));

/** 11.2: by a palette, eight bits a dot; and its words, 11.3.3.4. */
function with_words({ palette, dots }, words) {
  const head = Buffer.from([0, 0, 0, 0, 0, 0, 0, 0, 8, 3, 0, 0, 0]);
  head.writeUInt32BE(viewport.width, 0);
  head.writeUInt32BE(viewport.height, 4);
  const lines = Array.from({ length: viewport.height }, (_, y) => [
    0, // not filtered
    ...dots.slice(y * viewport.width, (y + 1) * viewport.width),
  ]);
  return Buffer.concat([
    signature,
    chunk("IHDR", head),
    chunk("PLTE", Buffer.from(palette)),
    chunk("IDAT", deflateSync(Buffer.from(lines.flat()), { level: 9 })),
    chunk("iTXt", Buffer.from(`Description\0\0\0\0\0${words}`)),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

async function write(page, words) {
  const blank = await page.context().newPage();
  writeFileSync(picture, with_words(await few_colours(blank, await page.screenshot()), words));
}

await run({
  "the README's picture of the page has the words and the size of today's page": () =>
    on_page(
      chromium,
      async (page) => {
        await page.emulateMedia({ colorScheme: "light" });
        await to(page, "Weigh");
        await settled(page);
        await page.evaluate(() => document.activeElement.blur());
        const words = (await page.locator("#page").innerText()).split(/\s+/).join(" ");
        if (process.env.PICTURE === "write") await write(page, words);

        const kept = readFileSync(picture);
        const of_kind = new Map(chunks(kept));
        const size = [0, 4].map((at) => of_kind.get("IHDR").readUInt32BE(at));
        assert.deepEqual(size, [viewport.width, viewport.height]);
        assert.ok(kept.length < 150_000, `${kept.length} bytes`);
        const told = of_kind.get("iTXt").toString().split("\0").at(-1);
        assert.equal(told, words, "PICTURE=write node picture_test.mjs SOURCE_FOLDER PROGRAM makes it anew");
      },
      { viewport },
    ),
});
await chromium.close();
