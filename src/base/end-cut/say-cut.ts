import type { EndCut, Laid, LongPoint, MarkedLine, Reading, RipCut, SawnCut } from './api.ts';
import { OPPOSITE } from './lay.ts';
import {
  ARRIS,
  CORNER,
  type CutStyle,
  capital,
  END,
  SIDE,
  sayAngle,
  sayBoard,
  sayLength,
  sayRise,
  TEXT,
  USUAL_STYLE,
} from './words.ts';

/** A cut in plain sentences of the trade, one a line, from its data alone. */
export function sayCut(cut: SawnCut, style: CutStyle = USUAL_STYLE): readonly string[] {
  switch (cut.kind) {
    case 'end':
      return sayEndCut(cut, style);
    case 'rip':
      return sayRipCut(cut, style);
    case 'flat':
      return [TEXT.flat(SIDE[cut.side])];
    default:
      return cut satisfies never;
  }
}

/** How the work lies and what the saw is set to, one sentence without its full stop. */
export function sayLaid({ lay, waste, stopEnd, mitre, tilt }: Laid, style: CutStyle = USUAL_STYLE): string {
  const end = stopEnd === 'far' ? END.near : END.far;
  return [
    `${TEXT.lie(lay)}, ${TEXT.endTo(end, waste)}, ${TEXT.stopAt(END[stopEnd])}`,
    saySetting(mitre, tilt, style),
  ].join('; ');
}

/** Swing and tilt, with all that a maker may set them by. */
export function saySetting(mitre: Reading, tilt: Reading, style: CutStyle): string {
  const swing = isZero(mitre, style)
    ? TEXT.noSwing
    : `${TEXT.swing(sayAngle(mitre.fromSquare, style), mitre.to!, sayAngle(mitre.complement, style))}, ${sayRise(mitre, style)}`;
  const lean = isZero(tilt, style)
    ? TEXT.noTilt
    : `${TEXT.tilt(sayAngle(tilt.fromSquare, style), tilt.to!, sayAngle(tilt.complement, style))}, ${sayRise(tilt, style)}`;
  return `${swing}; ${lean}`;
}

function sayEndCut(cut: EndCut, style: CutStyle): readonly string[] {
  const { onFace, onBack, all } = cut.arrises;
  const lengths = all.map(({ name, length }) => `${ARRIS[name]} ${sayLength(length, style)}`).join(', ');
  const heading = cut.square
    ? TEXT.square(capital(END[cut.end]))
    : TEXT.angles(
        capital(END[cut.end]),
        sayAngle(Math.abs(cut.mitre), style),
        sayAngle(Math.abs(cut.bevel), style),
      );
  return [
    heading,
    `${TEXT.lyingOnBack}: ${sayLaid(cut.onBack, style)}.`,
    ...(cut.onEdge === undefined ? [] : [`${TEXT.standing}: ${sayLaid(cut.onEdge, style)}.`]),
    sayLine(cut.onFaceLine, SIDE.face, TEXT.alongFace, style),
    sayLine(cut.onEdgeLine, 'edges', TEXT.alongEdge, style),
    TEXT.lengths(lengths),
    ...(cut.square ? [] : [sayPoint(onFace, SIDE.face, style), sayPoint(onBack, SIDE.back, style)]),
    ...(cut.square ? [] : [TEXT.proof(sayAngle(cut.inside.face, style), sayAngle(cut.inside.back, style))]),
  ];
}

function sayLine(
  line: MarkedLine,
  where: string,
  along: (rising: boolean) => string,
  style: CutStyle,
): string {
  if (sayAngle(line.angle, style) === sayAngle(0, style)) return TEXT.squareLine(where);
  const struck = style.length.unit === 'mm' ? line.over100 : line.over4in;
  return TEXT.line(
    where,
    sayAngle(line.set, style),
    along(line.angle < 0),
    sayLength(line.drop, style),
    sayLength(struck, style),
    sayBoard(style),
  );
}

function sayPoint(
  { long, by }: { readonly long: LongPoint; readonly by: number },
  where: string,
  style: CutStyle,
): string {
  return long === 'even' ? TEXT.evenPoints(where) : TEXT.longPoint(where, CORNER[long], sayLength(by, style));
}

function sayRipCut(cut: RipCut, style: CutStyle): readonly string[] {
  const edge = capital(SIDE[cut.edge]);
  const fence = SIDE[OPPOSITE[cut.edge]];
  return [
    ...(cut.wider === undefined
      ? [TEXT.ripUpright(edge, fence)]
      : [
          TEXT.rip(edge, fence, capital(SIDE[cut.down])),
          TEXT.ripTilt(
            sayAngle(cut.tilt.fromSquare, style),
            sayAngle(cut.tilt.complement, style),
            sayRise(cut.tilt, style),
          ),
        ]),
    ...(cut.taper === 0
      ? []
      : [
          TEXT.taper(
            sayAngle(Math.abs(cut.taper), style),
            cut.taper > 0 ? END.far : END.near,
            sayRise(cut.jig, style),
          ),
        ]),
    TEXT.ripWidth(sayLength(cut.width.face, style), sayLength(cut.width.back, style)),
  ];
}

function isZero({ fromSquare }: Reading, style: CutStyle): boolean {
  return sayAngle(fromSquare, style) === sayAngle(0, style);
}
