import type { Finding } from '../../core/index.ts';
import type { Collision, MeasuredBase } from '../solids/index.ts';
import type { ChairPlaces, Measured, Rocking, Sag, Tipping } from '../statics/index.ts';
import type { JoineryMass } from './with-joinery.ts';

/** What a beam that carries the top does under its load. */
export interface BeamSag {
  readonly part: string;
  readonly label: string;
  readonly sag: Sag;
}

/** How a base stands, with its top. */
export interface StandingUp {
  /** With what joints take out and put in. */
  readonly measured: MeasuredBase;
  readonly joinery: JoineryMass;
  /** kg, reckoned in the wood of the base. */
  readonly topMass: number;
  readonly collisions: readonly Collision[];
  readonly tipping?: Tipping;
  readonly rocking?: Rocking;
  readonly overhang: readonly Measured[];
  readonly knees: readonly Measured[];
  readonly chairs?: ChairPlaces;
  readonly beams: readonly BeamSag[];
  /** Spread along the top for the sag of its rails, kg. */
  readonly load: number;
  readonly findings: readonly Finding[];
}
