import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bars, findBar, readBar, readBarCount } from "../../server/src/catalog/bars.js";

const inch = 0.0254;

// ASTM A615/A615M, Table 1: nominal weight lb/ft, an independent check on the area by 490 pcf steel.
const weights: readonly (readonly [string, number])[] = [
  ["no. 3", 0.376],
  ["no. 4", 0.668],
  ["no. 5", 1.043],
  ["no. 6", 1.502],
  ["no. 7", 2.044],
  ["no. 8", 2.67],
  ["no. 9", 3.4],
  ["no. 10", 4.303],
  ["no. 11", 5.313],
  ["no. 14", 7.65],
  ["no. 18", 13.6],
];

// EN 10080:2005, Table 6: nominal area, mm².
const rounds: readonly (readonly [number, number])[] = [
  [6, 28.3],
  [8, 50.3],
  [10, 78.5],
  [12, 113],
  [14, 154],
  [16, 201],
  [20, 314],
  [25, 491],
  [28, 616],
  [32, 804],
  [40, 1257],
];

describe("nominal values", () => {
  it.each(weights)("%s weighs what the standard says", (name, weight) => {
    const bar = readBar(name);
    expect(bar).toBeDefined();
    expect(Math.abs(((bar?.area ?? 0) / inch ** 2 / 144) * 490 - weight) / weight).toBeLessThan(0.02);
  });

  it.each([
    ["no. 3", 0.375, 0.11],
    ["no. 4", 0.5, 0.2],
    ["no. 5", 0.625, 0.31],
    ["no. 6", 0.75, 0.44],
    ["no. 7", 0.875, 0.6],
    ["no. 8", 1.0, 0.79],
    ["no. 9", 1.128, 1.0],
    ["no. 10", 1.27, 1.27],
    ["no. 11", 1.41, 1.56],
    ["no. 14", 1.693, 2.25],
    ["no. 18", 2.257, 4.0],
  ])("%s is %f in across with %f in²", (name, diameter, area) => {
    expect(readBar(name)?.diameter).toBeCloseTo(diameter * inch, 12);
    expect(readBar(name)?.area).toBeCloseTo(area * inch ** 2, 12);
  });

  it.each(rounds)("%i mm has %f mm²", (size, area) => {
    expect(Math.abs((readBar(`${size} mm`)?.area ?? 0) * 1e6 - area)).toBeLessThan(0.5);
  });

  it.each([
    ["10M", 11.3, 100],
    ["15M", 16, 200],
    ["20M", 19.5, 300],
    ["25M", 25.2, 500],
    ["30M", 29.9, 700],
    ["35M", 35.7, 1000],
    ["16M", 15.9, 199],
    ["19M", 19.1, 284],
  ])("%s is %f mm across with %f mm²", (name, diameter, area) => {
    expect(readBar(name)?.diameter).toBeCloseTo(diameter / 1000, 12);
    expect(readBar(name)?.area).toBeCloseTo(area / 1e6, 12);
  });

  it("every area is that of a round of its diameter within 3 percent, and every row has a source", () => {
    for (const bar of bars) {
      expect(Math.abs(bar.area / ((Math.PI / 4) * bar.diameter ** 2) - 1)).toBeLessThan(0.03);
      expect(bar.source).toMatch(/A615|G30\.18|EN 10080/);
    }
    expect(new Set(bars.map((bar) => bar.name)).size).toBe(bars.length);
  });
});

describe("reading a callout", () => {
  it.each([
    ["no. 6", "no. 6"],
    ["No 6", "no. 6"],
    ["NO.6", "no. 6"],
    ["#6", "no. 6"],
    ["# 6", "no. 6"],
    ["no. 6 bars", "no. 6"],
    ["16M", "16M"],
    ["20 m", "20M"],
    ["T16", "16 mm"],
    ["N16", "16 mm"],
    ["16 mm", "16 mm"],
    ["16mm dia", "16 mm"],
    ["dia 16", "16 mm"],
    ["dia. 16 mm", "16 mm"],
    ["ø16", "16 mm"],
  ])("%s is %s", (text, name) => {
    expect(readBar(text)?.name).toBe(name);
  });

  it.each([
    ["no. 12", "no. 12 is not a bar that is made", "no. 11"],
    ["18 mm", "18 mm is not a bar that is made", "16 mm"],
    ["17M", "17M is not a bar that is made", "16M"],
    ["6", "is not a bar", "no. 6"],
    ["six", "is not a bar", undefined],
  ])("%s is refused with its neighbors", (text, words, neighbor) => {
    const answer = findBar(text);
    expect(readBar(text)).toBeUndefined();
    expect(answer).toHaveProperty("problem", expect.stringContaining(words));
    if ("problem" in answer) expect(neighbor === undefined ? answer.nearest.length : answer.nearest).toEqual(neighbor === undefined ? 0 : expect.arrayContaining([neighbor]));
  });
});

describe("reading a number of bars", () => {
  it.each([
    ["8 no. 6", 8, "no. 6", "8", "no. 6"],
    ["8-no. 6", 8, "no. 6", "8", "no. 6"],
    ["8-#6", 8, "no. 6", "8", "#6"],
    ["(8) no. 6", 8, "no. 6", "8", "no. 6"],
    ["  12 x 16 mm ", 12, "16 mm", "12", "16 mm"],
    ["8T16", 8, "16 mm", "8", "T16"],
    ["8 15M", 8, "15M", "8", "15M"],
    ["6 × N20", 6, "20 mm", "6", "N20"],
    ["4 no. 6 bars", 4, "no. 6", "4", "no. 6 bars"],
  ])("%s is counted, and each part has its place", (text, count, name, countText, barText) => {
    const read = readBarCount(text);
    if ("problem" in read) throw new Error(read.problem);
    expect([read.count, read.bar.name]).toEqual([count, name]);
    expect(text.slice(read.countAt.start, read.countAt.end)).toBe(countText);
    expect(text.slice(read.barAt.start, read.barAt.end)).toBe(barText);
  });

  it.each([
    ["no. 6", "how many", "no. 6"],
    ["16 mm", "how many", "16 mm"],
    ["8 no. 12", "not a bar that is made", "no. 12"],
    ["0 no. 6", "at least 1", "0"],
    ["8", "write the number of bars and the bar", "8"],
    ["many", "write the number of bars and the bar", "many"],
  ])("%s is refused at the part that is wrong", (text, words, part) => {
    const read = readBarCount(text);
    if (!("problem" in read)) throw new Error("was read");
    expect(read.problem).toContain(words);
    expect(text.slice(read.at.start, read.at.end)).toBe(part);
  });

  it("reads back any count of any bar by its own name", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.constantFrom(...bars), (count, bar) => {
        const read = readBarCount(`${count} ${bar.name}`);
        expect(read).toMatchObject({ count, bar: { name: bar.name } });
      }),
    );
  });

  it("answers any text without throwing", () => {
    fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 60 }), (text) => typeof readBarCount(text) === "object" && typeof findBar(text) === "object"));
  });
});
