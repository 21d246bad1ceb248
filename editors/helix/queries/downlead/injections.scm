; TODO, FIXME and addresses in comments, where a grammar for comments is installed.
((comment) @injection.content
  (#set! injection.language "comment"))
