/** Texts a new notebook can start from. */
import type { StarterReply } from "../../../shared/protocol.js";
import { starters } from "../summary/starters.js";

export function starterFor(kind: string): StarterReply {
  const kinds = starters.map(({ kind: id, label, detail }) => ({ kind: id, label, detail }));
  return { text: starters.find((starter) => starter.kind === kind)?.text ?? "", kinds };
}
