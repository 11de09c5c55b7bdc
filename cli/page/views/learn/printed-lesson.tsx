import { Construction } from './construction.tsx';
import type { Lesson } from './lesson.ts';
import { drawingOf } from './lesson-drawings.ts';
import { restsOn } from './rests-on.ts';

/** Every step with its drawing, on paper alone. */
export const PrintedLesson = ({ lesson }: { lesson: Lesson }) => (
  <div class="printed">
    <p>
      Drawing the {lesson.garment} for {lesson.body}. What a step adds is drawn heavy, what stood before it
      light.
    </p>
    {lesson.steps.map(({ number, title, words, source, places, draws }) => {
      const on = draws.length > 0 ? drawingOf(lesson, number) : undefined;
      return (
        <section key={number} class="printed-step">
          <div>
            <h3>
              {number}. {title}
            </h3>
            <p>{words.map(({ text }) => text).join('')}</p>
            {places.map((place) => (
              <p key={place}>{place}</p>
            ))}
            <p class="quiet">{restsOn(source)}</p>
          </div>
          {on !== undefined && <Construction lesson={lesson} on={on} step={number} />}
        </section>
      );
    })}
  </div>
);
