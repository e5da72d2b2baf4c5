/** Shapes of the maker’s own. */
export const ownShape = {
  title: 'Own shape',
  photo: 'Photograph',
  photoHelp:
    'A picture of an old leg or a mock-up, a sheet of paper lying flat beside it. It stays in this browser.',
  notAPicture: (name: string) => `${name} is no picture that this browser can read.`,
  notKept: 'This browser does not keep the drawing: it lasts as long as this page.',
  sheet: 'The sheet in it',
  sheetWay: (name: string, way: 'upright' | 'long') =>
    way === 'upright' ? `${name}, upright` : `${name}, on its long side`,
  mark: (marked: number) =>
    marked === 0
      ? 'Mark the corners of the sheet, clockwise from the upper left one.'
      : `${marked} of 4 corners marked.`,
  made: (near: number, far: number) =>
    `True to about ${near.toFixed(1)} mm at the sheet, ${far.toFixed(1)} mm three sheets away, if each corner is marked within a pixel.`,
  markAgain: 'Mark the corners again',
  markHere: 'The photograph: mark the four corners of the sheet',
  drawHere: 'The drawing: click points of the outline',
  begin: 'Click where the outline begins',
  svg: 'From a file',
  svgHelp: 'The largest closed outline of an SVG file, with its openings.',
  svgLaid: (file: string, loops: number) =>
    loops === 1 ? `${file}: an outline is laid.` : `${file}: an outline with openings is laid.`,
  svgStays: 'What was drawn before stays as it is.',
  draw: 'Draw',
  stroke: 'Next stroke',
  tools: { line: 'Line', arc: 'Arc', batten: 'Batten' },
  toolHelp: {
    line: 'Click where it ends.',
    arc: 'Click a point on its way, then where it ends.',
    batten: 'Click nails along the curve, the last one twice.',
  },
  role: 'Edge',
  roles: { routed: 'routed', sawn: 'sawn', joint: 'joint', left: 'left as it is' },
  point: 'Or type a point',
  across: 'Across',
  up: 'Up',
  addPoint: 'Add the point',
  takeBack: 'Take back',
  endBatten: 'End the batten',
  close: 'Close it',
  clear: 'Begin again',
  use: 'Use it',
  name: 'Name',
  stock: 'Thickness',
  make: 'Make it a form',
  notClosed: 'Close an outline first: end it where it began.',
  isClosed: (count: number) => {
    if (count === 1) return '1 closed outline.';
    return count === 2 ? '1 outline with 1 opening.' : `1 outline with ${count - 1} openings.`;
  },
} as const;
