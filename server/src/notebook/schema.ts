/** The notebook format, as data, one file a section. Every field says what it is; a default says what it is taken from. */
import { number, record } from "./fields.js";
import { bases } from "./schema/bases.js";
import { columns } from "./schema/columns.js";
import { foundations } from "./schema/foundations.js";
import { ground } from "./schema/ground.js";
import { accept, codes, confirm, given, project } from "./schema/job.js";
import { loads, roof } from "./schema/roof.js";
import { site } from "./schema/site.js";

export const newestVersion = 1;

export const notebook = record("A structural project notebook.", {
  rootfast: number("Version of the notebook format.", { integer: true, least: 1 }),
  project,
  codes,
  site,
  ground,
  given,
  roof,
  loads,
  columns,
  bases,
  foundations,
  confirm,
  accept,
});

export type NotebookShape = (typeof notebook)["fields"];
