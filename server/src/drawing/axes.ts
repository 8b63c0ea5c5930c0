/** Two axes with round numbers on them, for curves of one quantity over another. */
import type { Frame } from "./scale.js";
import { line, words } from "./svg.js";

/** Round numbers from `from` to `to`, about `count` of them: steps of 1, 2 or 5 times a power of ten. */
export function roundSteps(from: number, to: number, count = 5): readonly number[] {
  const span = to - from;
  if (!(span > 0)) return [from];
  const raw = span / count;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = power * ([1, 2, 5].find((one) => one * power >= raw) ?? 10);
  const steps: number[] = [];
  for (let i = Math.ceil(from / step - 1e-9); i * step <= to + 1e-9 * span; i += 1) steps.push(i === 0 ? 0 : Number((i * step).toPrecision(12)));
  return steps;
}

export interface Axes {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  readonly strokes: readonly string[];
}

/** Axes over ranges in the units shown; titles are written with their unit. */
export function axes(frame: Frame, xs: readonly [number, number], ys: readonly [number, number], titles: { readonly x: string; readonly y: string }): Axes {
  const { left, top, width, height } = frame;
  const x = (value: number): number => left + (width * (value - xs[0])) / (xs[1] - xs[0]);
  const y = (value: number): number => top + height - (height * (value - ys[0])) / (ys[1] - ys[0]);
  const level = y(Math.min(Math.max(0, ys[0]), ys[1]));
  const strokes = [
    line(left, top, left, top + height, "thin"),
    line(left, level, left + width, level, "thin"),
    ...roundSteps(...xs).flatMap((value) => [line(x(value), level, x(value), level + 3, "thin"), value === 0 ? "" : words(x(value), level + 14, String(value), "middle", 10)]),
    ...roundSteps(...ys).flatMap((value) => [line(left - 3, y(value), left, y(value), "thin"), words(left - 6, y(value) + 4, String(value), "end", 10)]),
    words(left, top - 10, titles.y, "start", 10),
    words(left + width, level - 6, titles.x, "end", 10),
  ];
  return { x, y, strokes };
}
