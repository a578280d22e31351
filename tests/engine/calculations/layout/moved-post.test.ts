import { expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

// Bays of 96 and 90 in, moved by 5: 101 and 85. Only the first is known, so 91 is said with what it stands on.
it('the bay on the other side is said to be taken as wide as the one before, and what to do where it is not', () => {
  const { shown, said } = runNamed('moved-post', { bayBeforePost: '96 in', postMoved: '5 in' })
  expect(shown).toMatchObject({ longerBay: '101 in', shorterBay: '91 in' })
  expect(said).toContain(
    'I took both its bays to be 96 in. If they were not alike, add 5 in to the one it moves away from',
  )
})
