import type { WornShown } from '../../requests/wear-messages.ts';
import { SvgPicture } from '../svg-picture.tsx';

const from = { front: 'from the front', side: 'from her left side', back: 'from the back' } as const;

/** What is worn in black line, where the browser shows nothing in space. */
export const InLines = ({ worn: { scene, sides } }: { readonly worn: WornShown }) => (
  <>
    <p class="said note">
      <strong>Note:</strong> this browser shows nothing in space, so it is drawn in black line, from three
      sides.
    </p>
    <div class="in-lines">
      {sides.map(({ view, svg }) => (
        <SvgPicture
          key={view}
          svg={svg}
          called={`Seen ${from[view]}`}
          words={`Seen ${from[view]}: ${scene.says}`}
        />
      ))}
    </div>
  </>
);
