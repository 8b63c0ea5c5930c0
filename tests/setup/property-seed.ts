/**
 * One seed for every property test, so that a run on one machine can be repeated on another.
 * `ROOTFAST_SEED=<number>` tries another draw, `ROOTFAST_SEED=any` a new one each time; a failure prints its seed and path.
 */
import fc from "fast-check";

const asked = process.env.ROOTFAST_SEED ?? "20260901";
if (asked !== "any") fc.configureGlobal({ seed: Number(asked) });
