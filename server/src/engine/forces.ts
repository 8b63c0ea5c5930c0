/** The forces at every column of every structure of a notebook. */
import { structureForces, type StructureForces } from "../summary/forces-table.js";
import type { Checked } from "./check-text.js";

export const forcesOf = ({ documents }: Checked): readonly StructureForces[] =>
  documents.map(({ structure, actions, system }) =>
    structureForces(
      structure.project.name?.value ?? "",
      system,
      structure.supports.map((support) => ({ support, actions: actions.of(support) })),
    ),
  );
