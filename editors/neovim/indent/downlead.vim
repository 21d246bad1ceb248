" One step for each open brace; a closing brace stands under the line that opened it.
if exists("b:did_indent")
  finish
endif
let b:did_indent = 1

setlocal indentexpr=DownleadIndent()
setlocal indentkeys=0},!^F,o,O
let b:undo_indent = "setlocal indentexpr< indentkeys<"

if exists("*DownleadIndent")
  finish
endif

" The line without texts and comment, so that braces in them do not count.
function! s:bare(number) abort
  return substitute(substitute(getline(a:number), '"[^"]*"', '', 'g'), '//.*', '', '')
endfunction

function! DownleadIndent() abort
  let previous = prevnonblank(v:lnum - 1)
  if previous == 0
    return 0
  endif
  let line = s:bare(previous)
  " a brace closed at the start of its line was counted there already
  let rest = substitute(line, '^\s*}', '', '')
  let depth = count(rest, '{') - count(rest, '}')
  let indent = indent(previous) + max([depth, 0]) * shiftwidth()
  if s:bare(v:lnum) =~# '^\s*}'
    let indent -= shiftwidth()
  endif
  return max([indent, 0])
endfunction
