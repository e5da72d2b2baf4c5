import fc from 'fast-check';

/**
 * Random tests are the same on every run unless LEGWRIGHT_FUZZ_SEED says otherwise: what passed once passes again on
 * another machine, and what another seed finds becomes a named case.
 */
fc.configureGlobal({ seed: Number(process.env.LEGWRIGHT_FUZZ_SEED ?? 20261125), endOnFailure: true });
