/** The screen of the shape. */
export const shape = {
  views: 'Views',
  front: 'Front',
  left: 'From the left',
  plan: 'Plan',
  parameters: 'Figures',
  typeFigure: (name: string, figure: string) => `${name}: ${figure}. Type another`,
  pullHandle: (label: string) => `${label}: pull with the arrow keys`,
  findingDrivers: 'Looking for what it follows …',
  noDriver: 'It follows from what is chosen; no one figure sets it.',
  byChanging: 'by changing',
  measured: (label: string) => `${label}, as measured`,
  range: (least: string, most: string) => `From ${least} to ${most}.`,
  noDrawing: 'There is no drawing until this is set right:',
  keptBy: (kept: readonly string[]) => kept.join('; '),
  hoverHint: 'Click a figure to type it. Pull a round point.',
  radius: (length: string) => `radius ${length}`,
  lean: (angle: string) => `${angle} from upright`,
  comb: 'Curvature comb',
  more: (count: number) =>
    count === 1 ? 'One more figure when larger' : `${count} more figures when larger`,
  unit: 'Unit of lengths',
} as const;
