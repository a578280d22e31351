// This file is about putting the house together: which reader reads, and who writes, by the settings.
import { type Assistant, createAssistant } from './assistant.ts'
import { openEndpoint } from './readers/model/endpoint.ts'
import { learntIn } from './readers/model/learnt.ts'
import { createModelReader } from './readers/model/reading.ts'
import { createWriter } from './readers/model/writing.ts'
import { offlineReader } from './readers/offline/offline.ts'
import type { Settings } from './settings.ts'

export interface House {
  readonly assistant: Assistant
  readonly front: 'offline' | 'model'
  readonly reads: string
}

export function furnish(settings: Settings): House {
  if (!settings.model)
    return { assistant: createAssistant(offlineReader), front: 'offline', reads: 'Questions are read on this machine.' }
  const { model, store } = settings
  const endpoint = openEndpoint({ ...model, ...('dataFolder' in store ? { learnt: learntIn(store.dataFolder) } : {}) })
  return {
    assistant: createAssistant(createModelReader(endpoint), createWriter(endpoint)),
    front: 'model',
    reads: `Questions go to the model “${model.model}” at ${endpoint.address}.`,
  }
}
