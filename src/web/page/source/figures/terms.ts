// Words of the trade, explained in a line or two. A drawing stands where it says more than another line.
import { svg, type TemplateResult } from "lit";

export interface Term {
  name: string;
  words: string;
  drawing?: TemplateResult; // on 120 x 72
}

const cup = svg`<path class="wall" d="M30 10l8 52h44l8-52" />`;

export const terms = {
  alkali: {
    name: "alkali",
    words:
      "Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight.",
  },
  batch: { name: "batch", words: "What is mixed at once. A run that is too large for the pot is made in several." },
  batter: { name: "batter", words: "Fats and lye solution stirred together, until it sets." },
  cure: {
    name: "cure",
    words: "The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one.",
  },
  embed: { name: "embed", words: "A piece of soap cast beforehand and buried in the base." },
  headspace: {
    name: "headspace",
    words: "The room left between the base and the brim. The topping may fill some of it.",
    drawing: svg`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${cup}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`,
  },
  kerf: { name: "kerf", words: "What the blade or wire turns to crumbs at each cut." },
  lye_solution: {
    name: "lye solution",
    words: "Alkali dissolved in water. Its weight is that of both together.",
  },
  margin: {
    name: "margin",
    words: "What is left of the price after cost and fees, as a share of the price without tax.",
  },
  markup: {
    name: "markup",
    words: "What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %.",
  },
  overrun: {
    name: "overrun",
    words: "How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",
    drawing: svg`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`,
  },
  purity: {
    name: "purity",
    words: "The share of the alkali that is alkali. The rest is mostly water that it drew from the air.",
  },
  rejects: { name: "rejects", words: "Pieces that come out unfit to sell, as a share of all that are made." },
  scale_step: {
    name: "smallest step",
    words: "The least by which the scale's display can change, such as 1 g or 0.1 g.",
  },
  superfat: {
    name: "superfat",
    words: "The share of the fats that is left without lye to turn it into soap, so that the soap is mild.",
  },
  superfat_as_weighed: {
    name: "superfat as weighed",
    words:
      "The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns.",
  },
  trace: {
    name: "trace",
    words: "The batter is thick enough that what drips from the whisk stays seen on it for a moment.",
  },
  weigh_cup: {
    name: "weigh-cup",
    words:
      "A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",
    drawing: svg`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${cup}<path class="measure" d="M20 10h80" />`,
  },
} satisfies Record<string, Term>;

export type TermName = keyof typeof terms;
