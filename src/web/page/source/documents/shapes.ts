// The shapes one can measure with a rule, and what to measure in each; names as mould files have them.

interface Measure {
  name: string;
  label: string;
  unit: string;
  optional?: boolean;
  count?: boolean;
}

/** A shape that is a row of points, each of two lengths. */
export interface PointList {
  columns: [Measure, Measure];
  least: number;
  words: string; // how to measure them
}

const mm = (name: string, label: string): Measure => ({ name, label, unit: "mm" });
const height = mm("height", "Floor to brim");
const draft: Measure = { name: "draft", label: "Draft angle of the wall", unit: "°", optional: true };

interface ShapeForm {
  words: string;
  measures: Measure[];
  points?: PointList;
}

const of_shape: Record<string, ShapeForm> = {
  block: {
    words: "Box, loaf or slab",
    measures: [
      mm("length", "Longer side at the brim"),
      mm("width", "Shorter side"),
      height,
      draft,
      { ...mm("corner_radius", "Corner radius"), optional: true },
    ],
  },
  frustum: {
    words: "Round cup",
    measures: [mm("floor_diameter", "Across the floor"), mm("brim_diameter", "Across the brim"), height],
  },
  fluted_cup: {
    words: "Fluted cup",
    measures: [
      mm("floor_diameter", "Across the floor"),
      mm("brim_diameter", "Across the brim"),
      height,
      { name: "flutes", label: "Flutes", unit: "", count: true },
      mm("flute_depth", "Depth of a flute"),
    ],
  },
  polygon: {
    words: "Regular polygon",
    measures: [
      { name: "sides", label: "Sides", unit: "", count: true },
      mm("across_flats", "Across the flats"),
      height,
      draft,
    ],
  },
  dome: { words: "Bowl", measures: [mm("diameter", "Across the brim"), height] },
  half_ball: { words: "Half ball", measures: [mm("diameter", "Across the brim")] },
  ball: { words: "Ball", measures: [mm("diameter", "Across")] },
  half_ring: {
    words: "Half ring",
    measures: [mm("centre_diameter", "Ring, middle to middle of the tube"), mm("tube_diameter", "Across the tube")],
  },
  turned_ring: {
    words: "Ring with a post",
    measures: [
      mm("outer_floor_diameter", "Cup, across the floor"),
      mm("outer_brim_diameter", "Cup, across the brim"),
      mm("post_floor_diameter", "Post, at its foot"),
      mm("post_brim_diameter", "Post, at its top"),
      height,
    ],
  },
  turned_profile: {
    words: "Round, by its wall from the side",
    measures: [],
    points: {
      columns: [mm("height", "Height"), mm("radius", "Middle to wall")],
      least: 2,
      words:
        "From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width.",
    },
  },
  outline: {
    words: "Any outline, straight up",
    measures: [height, draft],
    points: {
      columns: [mm("x", "From the left"), mm("y", "From below")],
      least: 3,
      words:
        "The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side.",
    },
  },
  heart: { words: "Heart", measures: [mm("side", "Straight edge, tip to round"), height, draft] },
};

export const shape_names: Record<string, string> = Object.fromEntries(
  Object.entries(of_shape).map(([kind, { words }]) => [kind, words]),
);

export const measures = (kind: string): Measure[] => of_shape[kind]?.measures ?? [];

export const point_list = (kind: string): PointList | undefined => of_shape[kind]?.points;
