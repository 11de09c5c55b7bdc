import fc from 'fast-check';

/**
 * The properties look at the same examples on every machine and at every run; another seed shows others:
 * BODKIN_SEED=7 npm test
 */
fc.configureGlobal({ seed: Number(process.env.BODKIN_SEED ?? 1911) });
