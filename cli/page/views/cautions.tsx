import type { MadeGarment } from '../messages.ts';

/** What its drafts warn of, before anything is cut or sewn. */
export const Cautions = ({ made }: { made: MadeGarment }) => (
  <section class="cautions" aria-label="Before you cut">
    <h2>Before you cut</h2>
    <p>
      Sew a trial bodice first (it is one of the garments) and try it on: no figure stands in for a fitting.
    </p>
    <ul>
      {made.parts.cautions?.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  </section>
);
