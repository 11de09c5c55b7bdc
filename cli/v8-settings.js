import { setFlagsFromString } from 'node:v8';

/*
 * A garment is drafted in half a second, in which V8 would compile for speed, on threads beside, what then hardly runs: that
 * takes as long as the draft. So code must have run seven times as much as is usual before it is compiled so; what
 * runs for longer is as fast as ever. Later ones of V8 wait longer by themselves, and know other words.
 */
if (process.versions.v8.startsWith('11.')) setFlagsFromString('--interrupt-budget=500000');

/*
 * As long as a garment is drafted all that belongs to it is needed, and afterwards nothing. V8 looks in the midst of a draft, takes
 * it for what stays, and makes more of its kind among what is old from then on, where it is collected seldom and dear: without, many
 * bodies take a fifth less of the processor.
 */
setFlagsFromString('--no-allocation-site-pretenuring');
