// What the parts of the Challenge screen are for, one sentence each, while somebody asks.

import { HelpTexts } from '../../parts/asked-help.tsx';
import { useForm } from './form.ts';

export function ChallengeHelp() {
  const { say } = useForm();
  return (
    <HelpTexts
      items={[
        [say('challenge.help-which'), say('challenge.which'), say('challenge.add')],
        [say('challenge.help-name'), say('challenge.name')],
        [say('challenge.help-copy'), say('challenge.copy')],
        [say('challenge.help-copy-with-builds'), say('challenge.copy-with-builds')],
        [say('challenge.help-build-it'), say('challenge.build-it')],
        [say('challenge.help-points'), say('challenge.points')],
        [say('challenge.help-rules'), say('challenge.rules')],
        [say('challenge.help-kit'), say('challenge.kit')],
        [say('challenge.help-places'), say('challenge.places')],
        [say('challenge.help-ruler'), say('challenge.ruler')],
        [say('challenge.help-counting'), say('challenge.counting')],
        [say('challenge.help-gaps'), say('challenge.gaps')],
        [say('challenge.help-criteria'), say('challenge.criteria')],
        [say('challenge.help-own'), say('challenge.own')],
        [say('challenge.help-supply'), say('challenge.supply')],
        [say('challenge.help-best'), say('challenge.best')],
        [say('challenge.help-grade'), say('challenge.grade')],
        [say('challenge.help-labels'), say('challenge.labels')],
        [say('challenge.help-day'), say('challenge.day')],
        [say('challenge.help-remove'), say('challenge.remove')],
        [say('challenge.help-large'), say('challenge.show-large')],
        [say('challenge.help-print'), say('challenge.to-print')],
      ]}
    />
  );
}
