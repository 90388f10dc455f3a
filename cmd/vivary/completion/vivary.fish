# Completion of vivary for fish. For this shell: vivary completion fish | source
# For all: vivary completion fish >~/.config/fish/completions/vivary.fish
function __vivary_names
    set -l words (commandline -opc)
    set -l word (commandline -ct)
    for line in (command $words[1] __complete $words[2..-1] "$word" 2>/dev/null)
        switch $line
            case ':folders'
                __fish_complete_directories "$word" folder
            case ':files'
                __fish_complete_path "$word" file
            case '*'
                echo $line
        end
    end
end
complete -c vivary -f -k -a '(__vivary_names)'
