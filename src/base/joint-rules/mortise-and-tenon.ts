import { RESIDUE_TOLERANCE } from '../../geometry/index.ts';
import type { GlueArea, InsertPlace, InsertSize, JointFault, JointPlace, RuleName } from './api.ts';
import { mostInto } from './depths-of-insert.ts';
import { glueArea } from './glue-area.ts';
import { roomAlong, rowsOfPlaces } from './rows-of-places.ts';
import { fitOfTenons, type TenonRules, tenonRules } from './rules.ts';
import { thicknessOfContact } from './thickness-of-contact.ts';

/** A tenon cut on the end of one part, its mortise in the other; mm. */
export interface TenonLayout {
  readonly size: InsertSize;
  /** The mortise, with the rounded ends that a bit leaves; the tenon's edges are rounded to it. */
  readonly place: InsertPlace;
  readonly mortiseDepth: number;
  /** Wood of the tenoned part beside the tenon, and beyond its ends: the shoulders that close the joint. */
  readonly shoulders: { readonly beside: number; readonly ends: number };
  /** What keeps it from being longer. */
  readonly lengthBy: RuleName | 'lengthInThicknesses';
  readonly glue: GlueArea;
}

export type TenonOutcome =
  | { readonly fits: true; readonly layout: TenonLayout }
  | { readonly fits: false; readonly fault: JointFault };

/**
 * Proportions of a mortise and tenon, the first part with the tenon: as thick as the tool of the list (bits or chisels, mm) that is nearest to a
 * third of that part, as wide as shoulders and two thirds of the joint allow, five thicknesses long or as long as the wood behind
 * lets the mortise be deep. No haunch: nothing grooves the parts of a base.
 */
export function layOutTenon(
  place: JointPlace,
  tools: readonly number[],
  own: Partial<TenonRules> = {},
): TenonOutcome {
  const named = tenonRules(own);
  const rules = fitOfTenons(named);
  const thickness = place.thickness ?? thicknessOfContact(place.contact);
  const wanted = rules.thicknessShare * thickness;
  const byWood = mostInto(place.behind[1], rules);
  const refused: NonNullable<JointFault['nearest']>[] = [];
  for (const thick of [...tools].sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted))) {
    const length = Math.min(byWood.most, named.lengthInThicknesses * thick);
    const room = roomAlong(place.contact, thick, rules);
    const width = room === undefined ? 0 : Math.min(room.width, rules.lengthShare * room.long);
    const size = { thickness: thick, width, length };
    const refuse = (rule: RuleName, measured: number, limit: number): void => {
      refused.push({ size, rule, measured, limit });
    };
    if (thick > rules.mostThicknessShare * thickness + RESIDUE_TOLERANCE)
      refuse('mostThicknessShare', thick, rules.mostThicknessShare * thickness);
    else if (thick < rules.leastThickness) refuse('leastThickness', thick, rules.leastThickness);
    else if (room === undefined) refuse('wall', (thickness - thick) / 2, rules.wall);
    else if (width < thick) refuse('contact', width, thick);
    else if (length < rules.leastDepth * thick - RESIDUE_TOLERANCE)
      refuse('leastDepth', length, rules.leastDepth * thick);
    else {
      const [slot] = rowsOfPlaces(place.contact, size, rules, 1, thickness);
      if (slot === undefined) continue;
      return {
        fits: true,
        layout: {
          size,
          place: slot,
          mortiseDepth: length + rules.depthClearance,
          shoulders: { beside: (thickness - thick) / 2, ends: (room.long - width) / 2 },
          lengthBy: length < named.lengthInThicknesses * thick ? byWood.rule : 'lengthInThicknesses',
          glue: glueArea([slot], length, place.grain[1]),
        },
      };
    }
  }
  const nearest = refused[0];
  return {
    fits: false,
    fault: { code: 'joint.nothing-fits', ...(nearest === undefined ? {} : { nearest }) },
  };
}
