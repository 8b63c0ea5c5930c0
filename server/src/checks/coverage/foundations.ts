/** Piers in soil, footings on soil, walls, and footings on rock. */
import type { Support } from "../../project/model.js";
import { foundationKind, isOnRock, isOnSoil, isSeismic, linesOf } from "./line.js";

const isPier = (support: Support): boolean => foundationKind(support) === "pier";
const isWall = (support: Support): boolean => foundationKind(support) === "wall on footing";
const isPad = (support: Support): boolean => foundationKind(support) === "footing";
const isFooting = (support: Support): boolean => isPad(support) || (isWall(support) && isOnSoil(support));
const isDoweled = (support: Support): boolean => !isPier(support) && !isPad(support) && isOnRock(support);

const pierLines = linesOf("pier", isPier, [
  {
    id: "pier.lateral",
    line: "Embedment by the building code's formula, free and restrained at grade, with its limit of depth and the increase for poles.",
    by: ["pier.embedment", "pier.movement", "pier.slab-reaction", "pier.block-overturning", "pier.block-bearing", "pier.block-sliding"],
    left: "Ground that falls away beside a pier (a lateral bearing stated for that slope is taken at its word), piers nearer than three widths as a group (they are found, and not checked), trenches and pools beside a pier.",
  },
  {
    id: "pier.broms",
    line: "A second opinion on the lateral strength of a short rigid pier by limit analysis of the soil (Broms).",
    by: ["pier.broms"],
    left: "The second opinion on lateral strength (Broms) where it has not been asked for or cannot be had: it needs friction angle or cohesion and lateral safety under the ground, one kind of soil, and a pier free at grade.",
  },
  {
    id: "pier.rotation",
    line: "Rotation and deflection of the pier in service, its moment and shear diagrams, by springs and p-y curves.",
    by: ["pier.movement", "pier.rotation", "pier.rotation-stated"],
    left: "Movement and lean of the pier where no limit asks for them: state movement limit or rotation limit under the foundation, and the stiffness of the soil under the ground (modulus growth, subgrade modulus, or the values of a p-y curve). Creep of clay and many cycles of load are not in them.",
  },
  {
    id: "pier.pull",
    line: "Uplift of the pier: weight, side resistance, bell, soil cone, water, grip of frost.",
    by: ["pier.uplift", "pier.frost-grip"],
    left: "Piers nearer than three widths as a group (they are found, and not checked), cones of soil that meet, and the grip of frozen soil where no adfreeze stress is stated under the ground.",
  },
  { id: "pier.end", line: "Bearing under the pier, with eccentricity.", by: ["pier.bearing", "pier.block-bearing"], left: "Bearing of a slender pier is concentric: its moment goes into the soil beside it." },
  {
    id: "pier.concrete",
    line: "Concrete of the pier: axial load with bending, shear, least bars, spiral or ties, cover, lap of rods and bars.",
    by: ["pier.axial", "pier.bending", "pier.slender", "pier.shear", "pier.least-ties", "pier.plain", "pier.plain-shear", "pier.least-bars", "pier.most-bars", "pier.bar-count", "pier.bar-gap", "pier.cover", "pier.spiral-ratio", "pier.spiral-gap", "pier.tie-spacing", "pier.tie-size", "pier.bars-held", "pier.seismic-tie-spacing", "pier.seismic-tie-size", "pier.seismic-confinement", "pier.rod-lap", "pier.rod-lap-distance", "pier.plate-fit"],
    left: "Concrete of the pier: bars are taken to go all the way and to be developed where they are needed, one spacing of ties is looked at over the whole height; a bell is not looked at, nor what the column above adds to the sway of a slender pier.",
  },
]);

const footingLines = linesOf("footing", isFooting, [
  {
    id: "footing.stability",
    line: "Footings on soil: bearing with partial contact, overturning, sliding, uplift.",
    by: ["footing.bearing", "footing.overturning", "footing.sliding", "footing.uplift", "footing.frost-grip"],
    left: "Footings on soil: columns of different lines on one pad (a shared pad stands under one line, in one row along its side), grip of frozen soil where no adfreeze stress is stated, slopes.",
    applies: isPad,
  },
  {
    id: "footing.concrete",
    line: "Footings on soil: one-way and two-way shear, moment transfer, bending, top steel under uplift, development, least steel, dowels.",
    by: ["footing.one-way-shear", "footing.two-way-shear", "footing.flexure", "footing.combined-bending", "footing.combined-shear", "footing.combined-development", "footing.bar-lap", "footing.top-flexure", "footing.development", "footing.least-steel", "footing.bar-spacing", "footing.least-depth", "footing.joint-bearing", "footing.joint-bars", "footing.joint-least-bars", "footing.joint-development", "footing.pedestal-axial", "footing.pedestal-bending", "footing.pedestal-slender", "footing.pedestal-shear", "footing.pedestal-least-ties", "footing.pedestal-most-bars", "footing.pedestal-bar-count", "footing.pedestal-bar-gap", "footing.pedestal-cover", "footing.pedestal-spiral-ratio", "footing.pedestal-spiral-gap", "footing.pedestal-tie-spacing", "footing.pedestal-tie-size", "footing.pedestal-bars-held", "footing.pedestal-rod-lap", "footing.pedestal-rod-lap-distance", "footing.pedestal-plate-fit"],
    left: "Footings on soil: shear friction at the foot of the pedestal, an unreinforced pedestal, bars that end within a pad under several columns, laps of bars where none is stated, cover of the pad by exposure, pads without bars.",
    applies: isPad,
  },
  {
    id: "footing.pedestal-ties",
    line: "Closer ties of a pedestal in seismic design category C to F.",
    by: [],
    left: "Closer ties of a pedestal in seismic design category C to F: the standards name those of columns and of piers; which a pedestal under a cantilevered column is to have is for the engineer of record to say.",
    applies: (support) => isPad(support) && isSeismic(support) && support.foundation?.fields.pedestal !== undefined,
  },
  {
    id: "footing.soil",
    line: "Footings on soil: depth against frost, presumptive values, the general bearing capacity equation, settlement.",
    by: ["site.frost", "footing.bearing", "footing.bearing-capacity", "footing.settlement"],
    left: "Footings on soil: settlement where no settlement limit is stated under the foundation; consolidation of clay, tilt and the difference from one column to the next; layered ground.",
    applies: isPad,
  },
  {
    id: "footing.strip",
    line: "Strip footings under walls on soil: bearing, overturning, sliding, their concrete and steel.",
    by: ["wall.bearing", "wall.overturning", "wall.sliding", "wall.uplift", "wall.strip-flexure", "wall.strip-shear", "wall.strip-development", "wall.strip-least-steel", "wall.strip-bar-spacing"],
    left: "Strip footings under walls on soil: footings without bars, the bearing capacity equation, settlement, and the wall as a beam between its posts.",
    applies: (support) => isWall(support) && isOnSoil(support),
  },
]);

const wallLines = linesOf("wall", isWall, [
  {
    id: "wall.earth",
    line: "Earth pressure, surcharge and water on a wall, with overturning, sliding and bearing.",
    by: ["wall.overturning", "wall.sliding", "wall.bearing", "wall.uplift", "rock.bearing"],
    left: "Earth pressure on a wall: battered backs, layered fill, point and strip loads behind it, compaction, expansive and frozen fill, the push of the soil in an earthquake where no seismic coefficient of the fill is stated or the soil is at rest or in water, walls held back by anchors, and the slope as a whole.",
  },
  {
    id: "wall.stem",
    line: "Wall stem in bending and shear with the post's moment, shear and uplift spread over an effective width; steel of both faces.",
    by: ["wall.stem-flexure", "wall.stem-shear", "wall.stem-least-steel", "wall.stem-curtains", "wall.stem-bar-spacing", "wall.stem-cover"],
    left: "The wall above its footing: wind on the wall itself, its bending along its length and at corners, tapered walls, and the friction of the soil on its back.",
  },
  { id: "wall.joint", line: "Wall dowels into the footing by shear friction and development.", by: ["wall.joint-shear", "wall.joint-development", "wall.joint-bars", "wall.joint-least-bars", "wall.movement-joint"], left: "The joint of a wall and its footing: keys in the joint, welded and headed bars, and dowels spliced by couplers." },
  { id: "wall.anchors", line: "Anchors near the free faces of a wall.", by: ["anchors.breakout-tension", "anchors.breakout-shear", "anchors.side-face-blowout"], left: "Cones and wedges of neighboring posts on one wall that reach into each other." },
]);

const rockLines = linesOf("rock", isDoweled, [
  {
    id: "rock.dowels",
    line: "Rock dowels in tension: steel, bar to grout, grout to rock, rock cone with overlap, group.",
    by: ["rock.dowel-steel", "rock.bar-bond", "rock.dowel-bond", "rock.cone", "rock.dowel-depth", "rock.dowel-development"],
    left: "Rock cones of neighboring lines, the strength of the rock itself (its weight alone counts), what earthquakes ask of dowels beyond their force.",
  },
  {
    id: "rock.dowel-details",
    line: "Drilling depth, hole size, wet and cold holes, and lap of the dowels above the rock.",
    by: ["rock.dowel-holes", "rock.dowel-layout", "rock.dowel-setting", "rock.sound-depth", "rock.dowel-lap"],
    left: "Test load of the dowels, and rust of bars in cracked rock.",
  },
  {
    id: "rock.sliding",
    line: "Sliding on rock, with dowels, a key or benches; sloping rock.",
    by: ["rock.sliding", "wall.sliding", "rock.surface"],
    left: "The slope of the rock under walls that hold back soil, joints in the rock along which a block of it slides, and rock crushed beside the dowels.",
  },
  { id: "rock.pressure", line: "Bearing on the rock.", by: ["rock.bearing", "wall.bearing"], left: "Settlement on weathered rock." },
  {
    id: "rock.pad-concrete",
    line: "Concrete of the pad or footing on rock: bending, shear, least steel.",
    by: ["rock.pad-flexure", "rock.pad-top-flexure", "rock.pad-one-way-shear", "rock.pad-two-way-shear", "rock.pad-development", "rock.pad-least-steel", "rock.pad-bar-spacing", "rock.pad-least-depth", "wall.strip-flexure", "wall.strip-shear", "wall.strip-development", "wall.strip-least-steel", "wall.strip-bar-spacing"],
    left: "Concrete of a pad or footing on rock without bars, a pedestal on such a pad and its joint with it.",
  },
  { id: "rock.mixed", line: "All supports on rock or none.", by: ["site.one-ground"] },
]);

export const foundationLines = [...pierLines, ...footingLines, ...wallLines, ...rockLines];
