// How wide a gap still counts as closed, and how much pieces may differ in height and carry together.

import { GAP_ALLOWANCE_MM_MOST, SLACK_MM_MOST } from '@cairnmark/engine';
import { CONTACT_MM, TRACED_GAP_MM } from '@cairnmark/geometry';
import { LengthField } from '../../parts/length-field.tsx';
import { Fold } from './fold.tsx';
import { useForm } from './form.ts';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function GapsFold() {
  const { challenge, inClass, ruler, say } = useForm();
  const { faults, make } = useMake();
  const { gapAllowanceMm, slackMm } = challenge;
  const [gap, slack] = [inClass.exact(gapAllowanceMm, 'mm'), inClass.exact(slackMm, 'mm')];
  return (
    <Fold title={say('challenge.gaps')} set={say('challenge.gaps-set', { gap, slack })}>
      <div className="chal-two">
        <div>
          <LengthField
            label={say('challenge.gap')}
            valueMm={gapAllowanceMm}
            leastMm={CONTACT_MM}
            mostMm={GAP_ALLOWANCE_MM_MOST}
            ruler={ruler}
            change={(typed) => make((one) => ({ ...one, gapAllowanceMm: typed }))}
          />
          <p className="chal-note">
            {say('challenge.gap-note', {
              least: inClass.exact(CONTACT_MM, 'mm'),
              most: inClass.exact(GAP_ALLOWANCE_MM_MOST, 'mm'),
              traced: inClass.exact(TRACED_GAP_MM, 'mm'),
            })}
          </p>
        </div>
        <div>
          <LengthField
            label={say('challenge.slack')}
            valueMm={slackMm}
            mostMm={SLACK_MM_MOST}
            ruler={ruler}
            change={(typed) => make((one) => ({ ...one, slackMm: typed }))}
          />
          <p className="chal-note">
            {say('challenge.slack-note', {
              paper: inClass.exact(PAPER_MM, 'mm'),
              most: inClass.exact(SLACK_MM_MOST, 'mm'),
            })}
          </p>
        </div>
      </div>
      <Told faults={faults} />
    </Fold>
  );
}

/** mm. What is usual for folded paper. Common practice, no source. */
const PAPER_MM = 2;
