/**
 * The cover over ties or spiral is thinner than the ground or the weather asks for: the bars rust and throw it off.
 *
 * ACI 318-19 Table 20.5.1.3.1: 3 in against the ground; formed and out in the weather or in the ground 1.5 in to no. 5, 2 in for larger bars.
 */
import { formula } from "../../formula/declare.js";
import { weighLimit } from "../contract.js";
import { detailOf } from "./concrete-detail.js";
import { type ConcreteMember, type MemberInputs, pedestalMember, pierMember, readMember } from "./concrete-member.js";

interface CoverInputs extends MemberInputs {
  readonly isFormed: boolean;
}

const c_r = { kind: "length", meaning: "least cover" } as const;

export const coverOnGround = formula({ id: "pier.cover-on-ground", text: "c_r = c_3", source: "ACI 318-19 Table 20.5.1.3.1: cast against and always in contact with the ground", symbols: { c_r }, constants: { c_3: "3 inch" } });

export const coverInForms = formula({
  id: "pier.cover-in-forms",
  text: "c_r = d_o > d_5 ? c_2 : c_15",
  source: "ACI 318-19 Table 20.5.1.3.1: exposed to weather or in contact with the ground, by the size of the outer bar",
  symbols: { c_r, d_o: { kind: "length", meaning: "diameter of the outer bars: ties or spiral of a pier, the largest bar of a wall", field: "foundations.*.ties.bar" } },
  constants: { d_5: "0.64 inch", c_2: "2 inch", c_15: "1.5 inch" },
});

const declare = (member: ConcreteMember) =>
  detailOf(
    member,
    (support, gather): CoverInputs => {
      const against = gather.may(support.foundation?.fields["cast against"]);
      // A pedestal stands above its pad and is formed, unless it is said to be cast against the cut.
      return { ...readMember(member, support, gather), isFormed: member.word === "pedestal" ? against !== "the ground" : against === "forms" };
    },
    {
      name: "cover",
      title: `Cover of the ties of the ${member.word}`,
      clause: "ACI 318-19 Table 20.5.1.3.1",
      fails: "The cover is thinner than ground or weather asks for.",
      seen: "Rust stains along the ties, then cover in shards.",
      range: `The clear cover stated, over the ties. ${member.word === "pier" ? "A pier is cast against the ground unless it is said to be cast in forms." : "A pedestal is formed unless it is said to be cast against the ground."} Deicing salt and sea ask for more, which is left to the durability of the concrete.`,
      formulas: [coverOnGround, coverInForms],
      fixedBy: (support) => support.foundation?.fields.cover,
      evaluate: (inputs, calc) => weighLimit(inputs.isFormed ? calc(coverInForms, { d_o: inputs.transverse.diameter }) : calc(coverOnGround, {}), inputs.cover, "length"),
      advise: (inputs, outcome, say) =>
        `${say.show(outcome.capacity, "length")} of cover; ${say.show(outcome.demand, "length")} needed ${inputs.isFormed ? "in ground or weather" : "where it is cast against the ground"}. Bring the cage in${inputs.isFormed || member.word === "pedestal" ? "" : ", or cast the pier in forms"}.`,
    },
  );

export const pierCover = declare(pierMember);
export const pedestalCover = declare(pedestalMember);
