/** The pictures of a support as a whole. */
import type { Support } from "../project/model.js";
import { baseSection } from "./base-section.js";
import { elevation } from "./elevation.js";
import type { Picture, Show } from "./picture.js";

/** From the ground up; one whose sizes are not all stated is left out. */
export const picturesOfSupport = (support: Support, show: Show): readonly Picture[] => [elevation(support, show), baseSection(support, show)].flatMap((picture) => picture ?? []);
