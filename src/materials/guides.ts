import { z } from 'zod';
import table from '../../shared/tables/guides.json';

const size = z.number().positive();
const guideTable = z.object({
  bearing: z.object({ height: size, leastContact: size }),
  bushing: z.object({ barrelShortBy: size, boreClearance: size, wall: size }),
  runOn: z.object({ least: size, most: size }),
});

/** Lengths in mm, all common practice. Source: shared/tables/guides.json. */
export const {
  /** Height of a bearing, and how much of it must bear on what it follows. */
  bearing: BEARING,
  /** By how much a barrel stays shorter than the template; room of the bore round the cutter; thickness of the wall. */
  bushing: BUSHING,
  /** How far a template should run on past the wood. */
  runOn: RUN_ON,
} = guideTable.parse(table);
