import { numberIn } from '../../readings/read-box.js';
import type { FieldSubject } from '../judge.js';

/** Service factor of the motor: that of the plate as read, else that of the file; nothing where neither tells [-]. */
export function serviceFactorOf({ readings, review }: FieldSubject): number | undefined {
  return numberIn(readings, 'identity.service-factor') ?? review.installation.pump.motor.serviceFactor?.value;
}
