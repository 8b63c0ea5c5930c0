import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crlf, notebook } from "./notebooks.js";
import { sample, serving } from "./serving.js";

const pieces = ["", "x", "7", " ", "\n", "\r\n", "  ", ": ", "#", "ft", "🏕️", "é", "= ", "{ ", "\t", '"', "---\n", "    depth: 2 ft\n", "foundations:\n", "\ufeff"];
const edit = fc.record({ at: fc.double({ min: 0, max: 1, noNaN: true }), remove: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 60 })), insert: fc.constantFrom(...pieces) });

describe("The server's text", () => {
  const client = serving();

  it("stays that of the editor over random edits: what is said of it equals what is said of the same text opened anew", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(notebook, crlf(notebook), `# 🏕️ 🏕️\n${notebook}`, sample("bus-stop-reactions")),
        fc.array(fc.array(edit, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 8 }),
        async (text, turns) => {
          const open = client().open(text);
          for (const edits of turns) {
            let text = open.text;
            // No editor puts a cursor between the two characters of one line end.
            const snapped = (offset: number) => (text[offset - 1] === "\r" && text[offset] === "\n" ? offset - 1 : offset);
            const changes = edits.map(({ at, remove, insert }) => {
              const from = snapped(Math.floor(at * text.length));
              const to = Math.max(from, snapped(Math.min(text.length, from + remove)));
              text = text.slice(0, from) + insert + text.slice(to);
              return { from, to, text: insert };
            });
            open.edit(...changes);
            expect(open.text).toBe(text);
          }
          const edited = await open.answer();
          const fresh = client().open(open.text);
          const anew = await fresh.answer();
          // A text that cannot be read is answered for from the last readable one; only the texts are compared here.
          expect(edited.diagnostics.map((diagnostic) => ({ ...diagnostic, relatedInformation: undefined }))).toEqual(anew.diagnostics.map((diagnostic) => ({ ...diagnostic, relatedInformation: undefined })));
          expect(edited.checked?.problems).toBe(anew.checked?.problems);
          expect(edited.checked?.stale).toBe(anew.checked?.stale);
          expect(await open.symbols()).toEqual(await fresh.symbols());
          await open.close();
          await fresh.close();
        },
      ),
      { numRuns: 40 },
    );
  });
});
