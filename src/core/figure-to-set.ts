/** One figure that, set in a design, makes a finding or a problem go: good for a button beside it. */
export interface FigureToSet {
  /** Where it stands in the design, names joined by dots: `parameters.stock`, `base.looseTenons`. */
  readonly path: string;
  /** What to put there, as a maker types it: lengths and angles with their unit; of a list all of it. */
  readonly value: unknown;
  /** What is set, in the maker's words: `Stock thickness: 46 mm`. */
  readonly words: string;
}
