import { describe, expect, it } from "vitest";
import { checkText } from "../../server/src/engine/check-text.js";
import { fieldAt } from "../../server/src/notebook/field-at.js";
import { leftRange, usualRanges } from "../../server/src/notebook/usual.js";
import { readQuantity } from "../../server/src/units/parse.js";

describe("Ranges no value in use leaves", () => {
  it.each(usualRanges)("%s is a quantity of the schema and its range reads", (path, [least, most]) => {
    const found = fieldAt(path.split("."))?.field;
    expect(found?.type).toBe("quantity");
    if (found?.type !== "quantity") return;
    const [low, high] = [readQuantity(least, found.kind), readQuantity(most, found.kind)];
    expect(low.ok && high.ok && low.value < high.value).toBe(true);
    if (!low.ok || !high.ok) return;
    const keys = path.split(".").map((key) => (key === "*" ? "A" : key));
    expect(leftRange(keys, low.value, found.kind)).toBeUndefined();
    expect(leftRange(keys, high.value, found.kind)).toBeUndefined();
    expect(leftRange(keys, high.value * 1.01, found.kind)).toEqual([least, most]);
  });

  it.each([
    ["site:\n  wind speed: 11 mph", "11 mph is outside any wind speed in use (60 mph to 300 mph)"],
    ["foundations:\n  P:\n    concrete: 4000 ksi", "4000 ksi is outside any concrete in use"],
    ["columns:\n  C:\n    height: 9.25 in", "9.25 in is outside any height in use"],
    ["columns:\n  C:\n    height: = 1 ft - 3 in", "is outside any height in use"],
    ["foundations:\n  P:\n    reactions:\n      dead:\n        down: 3000 kip", "3000 kip is outside any down in use (0 kip to 2000 kip)"],
    ["columns:\n  C:\n    combined:\n      given:\n        moment x: -25000 kip-ft", "-25000 kip-ft is outside any moment x in use"],
    ["loads:\n  bell:\n    push x: -1e9 kip", "is outside any push x in use (-2000 kip to 2000 kip)"],
    ["site:\n  ground elevation: 60000 ft", "60000 ft is outside any ground elevation in use"],
  ])("%s is an error at the value", (text, message) => {
    const { problems } = checkText(`rootfast: 1\n${text}\n`);
    expect(problems.filter((problem) => problem.severity === "error").map((problem) => problem.message).join()).toContain(message);
  });
});
