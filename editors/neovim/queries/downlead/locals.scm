(source_file) @local.scope

(statement
  . (keyword)
  . (name) @local.definition)

(name) @local.reference
