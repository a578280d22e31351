// This file is about what the model code of the US says of fences around pools. Places change it; many are stricter.

export const poolBarrier = {
  title: 'International Swimming Pool and Spa Code, section 305, and International Residential Code',
  edition: '2018',
  holds: 'where a place in the US has taken the model code over unchanged',
  from: 'rails and the gaps between them: ISPSC 2018, 305.2, read at https://www.thebuildingcodeforum.com/forum/threads/r2-pool-barrier.30545/latest; latch: https://rutherfordcountytn.gov/index.asp?SEC=82400DDA-9562-43FE-AB5D-7A6C09EA4F0F',
  secondHand: 'ISPSC 2018, 305.2, from handbooks that quote it; to be confirmed in the code itself',
  values: {
    height: '48 in',
    underSoft: '2 in',
    underSolid: '4 in',
    ball: '4 in',
    railsApart: '45 in',
    closeGap: '1 3/4 in',
    latch: '54 in',
  },
} as const
