var Zn=globalThis,to=Zn.ShadowRoot&&(Zn.ShadyCSS===void 0||Zn.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,Ss=Symbol(),Ts=new WeakMap,Xn=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==Ss)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(to&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=Ts.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&Ts.set(n,e))}return e}toString(){return this.cssText}},Rs=t=>new Xn(typeof t=="string"?t:t+"",void 0,Ss);var As=(t,e)=>{if(to)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=Zn.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},fi=to?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return Rs(n)})(t):t;var{is:ep,defineProperty:np,getOwnPropertyDescriptor:op,getOwnPropertyNames:ip,getOwnPropertySymbols:rp,getPrototypeOf:sp}=Object,eo=globalThis,Ps=eo.trustedTypes,ap=Ps?Ps.emptyScript:"",lp=eo.reactiveElementPolyfillSupport,$n=(t,e)=>t,hi={toAttribute(t,e){switch(e){case Boolean:t=t?ap:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},Fs=(t,e)=>!ep(t,e),Ds={attribute:!0,type:String,converter:hi,reflect:!1,useDefault:!1,hasChanged:Fs};Symbol.metadata??=Symbol("metadata"),eo.litPropertyMetadata??=new WeakMap;var It=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=Ds){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&np(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:r}=op(this.prototype,e)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let c=i?.call(this);r?.call(this,l),this.requestUpdate(e,c,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??Ds}static _$Ei(){if(this.hasOwnProperty($n("elementProperties")))return;let e=sp(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty($n("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty($n("properties"))){let n=this.properties,o=[...ip(n),...rp(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(fi(i))}else e!==void 0&&n.push(fi(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return As(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:hi).toAttribute(n,o.type);this._$Em=e,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:hi;this._$Em=i;let c=l.fromAttribute(n,r.type);this[i]=c??this._$Ej?.get(i)??c,this._$Em=null}}requestUpdate(e,n,o,i=!1,r){if(e!==void 0){let l=this.constructor;if(i===!1&&(r=this[e]),o??=l.getPropertyOptions(e),!((o.hasChanged??Fs)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(e)&&!this.hasAttribute(l._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,l??n??this[e]),r!==!0||l!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,c=this[i];l!==!0||this._$AL.has(i)||c===void 0||this.C(i,void 0,r,c)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};It.elementStyles=[],It.shadowRootOptions={mode:"open"},It[$n("elementProperties")]=new Map,It[$n("finalized")]=new Map,lp?.({ReactiveElement:It}),(eo.reactiveElementVersions??=[]).push("2.1.2");var _i=globalThis,Ms=t=>t,no=_i.trustedTypes,Os=no?no.createPolicy("lit-html",{createHTML:t=>t}):void 0,$i="$lit$",Wt=`lit$${Math.random().toFixed(9).slice(2)}$`,bi="?"+Wt,up=`<${bi}>`,_e=document,wn=()=>_e.createComment(""),yn=t=>t===null||typeof t!="object"&&typeof t!="function",wi=Array.isArray,Ws=t=>wi(t)||typeof t?.[Symbol.iterator]=="function",gi=`[ 	
\f\r]`,bn=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Es=/-->/g,Cs=/>/g,he=RegExp(`>|${gi}(?:([^\\s"'>=/]+)(${gi}*=${gi}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Ls=/'/g,Bs=/"/g,js=/^(?:script|style|textarea|title)$/i,yi=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),s=yi(1),E=yi(2),o_=yi(3),_t=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Is=new WeakMap,ge=_e.createTreeWalker(_e,129);function Ns(t,e){if(!wi(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return Os!==void 0?Os.createHTML(e):e}var Us=(t,e)=>{let n=t.length-1,o=[],i,r=e===2?"<svg>":e===3?"<math>":"",l=bn;for(let c=0;c<n;c++){let p=t[c],m,h,$=-1,x=0;for(;x<p.length&&(l.lastIndex=x,h=l.exec(p),h!==null);)x=l.lastIndex,l===bn?h[1]==="!--"?l=Es:h[1]!==void 0?l=Cs:h[2]!==void 0?(js.test(h[2])&&(i=RegExp("</"+h[2],"g")),l=he):h[3]!==void 0&&(l=he):l===he?h[0]===">"?(l=i??bn,$=-1):h[1]===void 0?$=-2:($=l.lastIndex-h[2].length,m=h[1],l=h[3]===void 0?he:h[3]==='"'?Bs:Ls):l===Bs||l===Ls?l=he:l===Es||l===Cs?l=bn:(l=he,i=void 0);let P=l===he&&t[c+1].startsWith("/>")?" ":"";r+=l===bn?p+up:$>=0?(o.push(m),p.slice(0,$)+$i+p.slice($)+Wt+P):p+Wt+($===-2?c:P)}return[Ns(t,r+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},vn=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,c=e.length-1,p=this.parts,[m,h]=Us(e,n);if(this.el=t.createElement(m,o),ge.currentNode=this.el.content,n===2||n===3){let $=this.el.content.firstChild;$.replaceWith(...$.childNodes)}for(;(i=ge.nextNode())!==null&&p.length<c;){if(i.nodeType===1){if(i.hasAttributes())for(let $ of i.getAttributeNames())if($.endsWith($i)){let x=h[l++],P=i.getAttribute($).split(Wt),F=/([.?@])?(.*)/.exec(x);p.push({type:1,index:r,name:F[2],strings:P,ctor:F[1]==="."?io:F[1]==="?"?ro:F[1]==="@"?so:be}),i.removeAttribute($)}else $.startsWith(Wt)&&(p.push({type:6,index:r}),i.removeAttribute($));if(js.test(i.tagName)){let $=i.textContent.split(Wt),x=$.length-1;if(x>0){i.textContent=no?no.emptyScript:"";for(let P=0;P<x;P++)i.append($[P],wn()),ge.nextNode(),p.push({type:2,index:++r});i.append($[x],wn())}}}else if(i.nodeType===8)if(i.data===bi)p.push({type:2,index:r});else{let $=-1;for(;($=i.data.indexOf(Wt,$+1))!==-1;)p.push({type:7,index:r}),$+=Wt.length-1}r++}}static createElement(e,n){let o=_e.createElement("template");return o.innerHTML=e,o}};function $e(t,e,n=t,o){if(e===_t)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=yn(e)?void 0:e._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=$e(t,i._$AS(t,e.values),i,o)),e}var oo=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??_e).importNode(n,!0);ge.currentNode=i;let r=ge.nextNode(),l=0,c=0,p=o[0];for(;p!==void 0;){if(l===p.index){let m;p.type===2?m=new Ce(r,r.nextSibling,this,e):p.type===1?m=new p.ctor(r,p.name,p.strings,this,e):p.type===6&&(m=new ao(r,this,e)),this._$AV.push(m),p=o[++c]}l!==p?.index&&(r=ge.nextNode(),l++)}return ge.currentNode=_e,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},Ce=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=$e(this,e,n),yn(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==_t&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):Ws(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&yn(this._$AH)?this._$AA.nextSibling.data=e:this.T(_e.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=vn.createElement(Ns(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new oo(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(e){let n=Is.get(e.strings);return n===void 0&&Is.set(e.strings,n=new vn(e)),n}k(e){wi(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of e)i===n.length?n.push(o=new t(this.O(wn()),this.O(wn()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=Ms(e).nextSibling;Ms(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},be=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,r){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)e=$e(this,e,n,0),l=!yn(e)||e!==this._$AH&&e!==_t,l&&(this._$AH=e);else{let c=e,p,m;for(e=r[0],p=0;p<r.length-1;p++)m=$e(this,c[o+p],n,p),m===_t&&(m=this._$AH[p]),l||=!yn(m)||m!==this._$AH[p],m===u?e=u:e!==u&&(e+=(m??"")+r[p+1]),this._$AH[p]=m}l&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},io=class extends be{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},ro=class extends be{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},so=class extends be{constructor(e,n,o,i,r){super(e,n,o,i,r),this.type=5}_$AI(e,n=this){if((e=$e(this,e,n,0)??u)===_t)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,r=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},ao=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){$e(this,e)}},zs={M:$i,P:Wt,A:bi,C:1,L:Us,R:oo,D:Ws,V:$e,I:Ce,H:be,N:ro,U:so,B:io,F:ao},cp=_i.litHtmlPolyfillSupport;cp?.(vn,Ce),(_i.litHtmlVersions??=[]).push("3.3.3");var we=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new Ce(e.insertBefore(wn(),r),r,void 0,n??{})}return i._$AI(t),i};var vi=globalThis,Le=class extends It{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=we(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return _t}};Le._$litElement$=!0,Le.finalized=!0,vi.litElementHydrateSupport?.({LitElement:Le});var pp=vi.litElementPolyfillSupport;pp?.({LitElement:Le});(vi.litElementVersions??=[]).push("4.2.2");var Hs=()=>{},ki=!1;function Js(t){Hs=t}function vt(){ki||(ki=!0,queueMicrotask(()=>{ki=!1,Hs()}))}function qs(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}function _(t,e){let n=t;for(let o of qs(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function W(t,e,n){return xi(t,qs(e),n)}function xi(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let c=[...t],p=xi(c[Number(o)],i,n);return p===void 0?c.splice(Number(o),1):c[Number(o)]=p,c}let r={...t??{}},l=xi(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var Ks={};function jt(t,e){(Ks[t]??=[]).push(e)}function kt(t,e){for(let n of Ks[t]??[])n(e)}var Vs=()=>/^#([0-9a-f]{48})$/.exec(location.hash)?.[1],lo="";function Gs(t){lo=t,sessionStorage.setItem("key",t)}Gs(Vs()??sessionStorage.getItem("key")??"");function Qs(t){addEventListener("hashchange",()=>{let e=Vs();!e||e===lo||(Gs(e),t())})}var Ys={status:0,body:new Blob};async function dp(t,e,n,o){try{let i=await fetch(e,{method:t,body:n,headers:{"X-Bench-Key":lo},signal:o});return{status:i.status,body:await i.blob()}}catch{return Ys}}function mp(t,e,n,o){return new Promise(i=>{let r=new XMLHttpRequest;r.open(t,e),r.setRequestHeader("X-Bench-Key",lo),r.responseType="blob",r.upload.onprogress=l=>o(l.total?l.loaded/l.total:0),r.onerror=()=>i(Ys),r.onload=()=>i({status:r.status,body:r.response}),r.send(n)})}var Zs={send:(t,e,n,o,i)=>n!==void 0&&o?mp(t,e,n,o):dp(t,e,n,i)};var fp=Zs,ut=({problem:t,remedy:e})=>[t,e].filter(Boolean).join("; "),w=class extends Error{constructor(n,o,i={}){super(o.line);this.status=n;this.complaint=o;this.answer=i}status;complaint;answer;get may_pass(){return this.status===0||this.status===503}},hp={file:"",field:"",problem:"Brimwright is not running",remedy:"start brimwright again and open the address it prints; what you typed is kept here",line:"Brimwright is not running: start it again and open the address it prints. What you typed is kept here."},Xs="what you typed is kept here";function gp(t){let[e,n]=t===503?["the program has too much to do at once",`it is asked again in a moment; ${Xs}`]:["internal error in brimwright (your files are not at fault)",`${Xs}: change something, or ask again`];return{file:"",field:"",problem:e,remedy:n,line:`${e} (answer ${t}); ${n}.`}}function ta(t,e){if(t===0)return new w(0,hp);let n=gp(t),o={...n,...e.complaint};return t>=500&&Object.assign(o,{is_fault:!0,remedy:o.remedy||n.remedy}),new w(t,o,e)}async function _p(t,e){try{return ta(t,JSON.parse(await e.text()))}catch{return ta(t,{})}}async function ea(...t){let{status:e,body:n}=await fp.send(...t);if(e>=200&&e<300)return n;throw await _p(e,n)}var ye=async(...t)=>JSON.parse(await(await ea(...t)).text()),ve=(t,e)=>ye("POST",t,JSON.stringify(e)),Be=()=>ye("GET","/api/files"),$t=t=>ye("GET",`/api/file?file=${encodeURIComponent(t)}`),uo=t=>ye("PUT","/api/file",JSON.stringify(t)),$p=12e3,bp=([t,e])=>`&${encodeURIComponent(`file:${t}`)}=${e??""}`;async function Ie(t){let e={changed:{},unreadable:[]};for(let n of na(t)){let{changed:o,unreadable:i}=await ye("GET",`/api/changed?wait=0${n}`);Object.assign(e.changed,o),e.unreadable.push(...i)}return e}function na(t){let e=[""];for(let n of[...t].map(bp))e.at(-1).length+n.length>$p?e.push(n):e[e.length-1]+=n;return e}var wp=crypto.randomUUID(),Ti=2e4;async function oa(t,e){let[n,...o]=na(t);if(o.length)return Ie(t);let i=`/api/changed?wait=${Ti/1e3}&tab=${wp}${n}`;return ye("GET",i,void 0,void 0,e)}var ia=t=>ve("/api/plan",t),ra=t=>ve("/api/plan",{...t,explain:!0}),sa=t=>ve("/api/gauge",{...t,inspect:!0}),Gt=t=>ve("/api/gauge",t),Si=t=>ve("/api/list",{what:t}),aa=async()=>(await Si("fats")).fats,la=async()=>(await Si("moulds")).moulds,ua=async()=>(await Si("tips")).tips,We=t=>ea("POST","/api/document",JSON.stringify(t)),ca=async t=>(await ve("/api/document",{...t,open:!0})).address,pa=(t,e)=>ye("POST",`/api/mesh?name=${encodeURIComponent(t.name)}`,t,e),da=async(t,e)=>(await ve("/api/keep",{upload:t,as:e})).file;var st=["pour","pipe","apart"];var at=t=>`${JSON.stringify(t,null,2)}
`;function Z(t){try{let e=JSON.parse(t??"");return e!==null&&typeof e=="object"&&!Array.isArray(e)?e:void 0}catch{return}}var kn=t=>t.slice(0,t.lastIndexOf("/")+1),xn=t=>t.slice(t.lastIndexOf("/")+1),ma=(t,e)=>{let n=kn(t);return n?yp(n+e):e};function yp(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function Qt(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function je(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|formula))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let r=i===1?t:`${n}_${i}${o}`;if(!e.some(l=>l.file===r))return r}}var vp=["mould","formula","file","own_fats","own_tips"];function Ri(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?Ri(o,i):vp.includes(n)?[i]:[]})}function Ai(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...Ri(t)])[n,o]=[W(n,i,void 0),W(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function fa(t,e){let n=["/id",...Ri(t)].filter(o=>_(t,o)!==_(e,o));return o=>n.reduce((i,r)=>_(i,r)===_(t,r)?W(i,r,_(e,r)):i,o)}var C=(t,e)=>({name:t,label:e,unit:"mm"}),Yt=C("height","Floor to brim"),co={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},Pi={block:{words:"Box, loaf or slab",measures:[C("length","Longer side at the brim"),C("width","Shorter side"),Yt,co,{...C("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[C("floor_diameter","Across the floor"),C("brim_diameter","Across the brim"),Yt]},fluted_cup:{words:"Fluted cup",measures:[C("floor_diameter","Across the floor"),C("brim_diameter","Across the brim"),Yt,{name:"flutes",label:"Flutes",unit:"",count:!0},C("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},C("across_flats","Across the flats"),Yt,co]},dome:{words:"Bowl",measures:[C("diameter","Across the brim"),Yt]},half_ball:{words:"Half ball",measures:[C("diameter","Across the brim")]},ball:{words:"Ball",measures:[C("diameter","Across")]},half_ring:{words:"Half ring",measures:[C("centre_diameter","Ring, middle to middle of the tube"),C("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[C("outer_floor_diameter","Cup, across the floor"),C("outer_brim_diameter","Cup, across the brim"),C("post_floor_diameter","Post, at its foot"),C("post_brim_diameter","Post, at its top"),Yt]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[C("height","Height"),C("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Yt,co],points:{columns:[C("x","From the left"),C("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[C("side","Straight edge, tip to round"),Yt,co]}},ha=Object.fromEntries(Object.entries(Pi).map(([t,{words:e}])=>[t,e])),Ne=t=>Pi[t]?.measures??[],Zt=t=>Pi[t]?.points;var Di=(t,e)=>String(_(t,e)??"").trim(),Tn=t=>Di(t,"/shape/kind"),xt=(t,e)=>_(t,`/${e}`)!==void 0,Fi=t=>["body","skin"].includes(Di(t,"/mesh/role"));function ct(t,e){let n=_(t,e);return Array.isArray(n)?n:[]}function ga(t,e){return(Zt(Tn(t))?.columns??[]).map(({name:o})=>String(_(e,`/${o}`)??"").trim())}function Sn(t){return ct(t,"/shape/points").flatMap((e,n)=>ga(t,e).every(Boolean)?[n]:[])}function po(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return ct(t,"/shape/points").flatMap((n,o)=>e(ga(t,n))?[o]:[])}var Mi=t=>ct(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function _a(t){let e=t,n=(o,i)=>{if(!Array.isArray(_(e,o)))return;let r=i.map(l=>_(t,`${o}/${l}`));e=W(e,o,r)};return Zt(Tn(t))&&n("/shape/points",Sn(t)),n("/water/weighings",Mi(t)),e}function mo(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let r=n==="/shape/points"?Sn(t):Mi(t);return`${n}/${r[Number(o)]??o}${i}`}function Rn(t){let e=[],n=i=>Di(t,i)!=="",o=(i,r)=>{i||e.push(r)};if(xt(t,"shape")){let i=Tn(t);o(i!=="","the shape");for(let{name:l,label:c,optional:p}of Ne(i))o(p||n(`/shape/${l}`),c.toLowerCase());let r=Zt(i);r&&o(Sn(t).length>=r.least,`${r.least} points at least`)}if(xt(t,"water")){o(n("/water/temperature"),"the water's temperature"),o(_(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o(_(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(Mi(t).length>0,"a weighing of water")}return!Fi(t)&&!xt(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var An={name:"run",list:"runs",new_name:({shipped:t,file:e,now:n})=>t?xn(e):Qt(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},fo={name:"formula",list:"formulas",new_name:({shipped:t,file:e,now:n})=>t?xn(e):Qt(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},Nt={name:"mould",list:"moulds",new_name:({now:t})=>Qt(String(t.name),".json"),written:t=>({..._a(t),name:String(t.name??"").trim()}),is_begun:t=>xt(t,"shape")||xt(t,"mesh")};var Ft={view:"reading",formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:{kind:An,id:"",file:"",version:null,shipped:!1,now:{},saved:void 0,unanswered:[]},formulas:{},past:[],future:[],batch:0,is_old:!1,dangers:{run:[],apart:[]},start_complaint:"",new_formula:{name:"",copied:""},printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},open:new Set,folded:new Set,units:kp(),announcement:""},a=Ft;function kp(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}function f(t){Object.assign(Ft,t),vt()}var Mt=t=>f({announcement:t});function y(t,e){Object.assign(t,e),vt()}function Ut(t,e){let{[t]:n,...o}=Ft.formulas;f({formulas:e?{...o,[t]:e}:o})}function Ue(t,e){let n=new Set(Ft[t]);n.delete(e)||n.add(e),f({[t]:n})}function Oi(t){Ft.open.has(t)||f({open:new Set(Ft.open).add(t)})}function ho(t,e,{name:n,note:o}={}){if(!Ft.files)return;let i={file:e,name:String(n??""),note:String(o??""),shipped:!1},r=Ft.files[t].filter(c=>c.file!==e),l=Ft.files[t].findIndex(c=>c.file===e);r.splice(l<0?r.length:l,0,i),f({files:{...Ft.files,[t]:r}})}async function ze({kind:t,name:e,text:n,from:o,about_to:i,is_own:r}){for(;;){let{runs:l=[],formulas:c=[],moulds:p=[]}=a.files??{},m=je(e,[...l,...c,...p]);i?.(m);let h=await xp(m,n,o);if(ho(t.list,m,Z(h.there.text)??{name:m}),h.is_new||r?.(h.there))return h.there}}async function xp(t,e,n){try{return{is_new:!0,there:await uo({file:t,version:null,text:e,from:n})}}catch(o){if(!(o instanceof w)||o.status!==409)throw o;return{is_new:!1,there:o.answer}}}var go=t=>`unsaved ${t.name} ${a.files?.folder??""} `;function ke({kind:t,id:e,file:n,version:o,shipped:i,now:r},l){if(t.is_begun(r))try{let c={id:e,file:n,version:o,shipped:i,text:at(r),copy:l};localStorage.setItem(go(t)+e,JSON.stringify(c))}catch{}}function Ei(t,e){try{return JSON.parse(localStorage.getItem(go(t)+e)??"null")??void 0}catch{return}}var xe=(t,e)=>localStorage.removeItem(go(t)+e);function $a(t){let e=go(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>Ei(t,o)??[])}var Tp=300,H=t=>t.now!==t.saved;function Li(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Xt(t,e,n=e){let o=await $t(e),i=Sp(t,JSON.parse(o.text),o.shipped),r=Ei(t,n),l=r?.copy&&o.shipped?await Rp(t,r,i):void 0;if(l)return xe(t,n),Xt(t,l);let{version:c,shipped:p=!1}=o,m={kind:t,id:n,file:e,version:c,shipped:p,now:i,saved:i,unanswered:[]};return r&&Ap(m,r,o),m}var Sp=(t,e,n=!1)=>t.name==="run"&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function Rp(t,e,n){if(!a.files?.[t.list].some(r=>r.file===e.copy))return;let o=Z(e.text),i=Z((await $t(e.copy)).text);if(!(!o||!i||at(o)===at(n)))return Ai(t.written(o),i)?e.copy:void 0}function Ap(t,e,n){let o=Z(e.text);if(!o||at(o)===at(t.now))return xe(t.kind,t.id);y(t,{now:o}),!(e.version===n.version||n.shipped)&&(y(t,{version:e.version}),Sa(t,n))}function Ot(t,e){let n=t.now;y(t,{now:e,failed:void 0}),ke(t),kt("edited",{file:t,before:n})}var ba=new WeakMap,Ci=async t=>ba.get(t),Pn=t=>ya(t,()=>Pp(t)),wa=t=>ya(t,()=>t.shipped?va(t,ka):Promise.resolve());function ya(t,e){let n=Ci(t).then(e);return ba.set(t,n.catch(()=>{})),n}async function Pp(t){!H(t)||t.theirs||await va(t,t.shipped||!t.file?ka:xa)}async function va(t,e){y(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof w&&y(t,{failed:ut(n.complaint)}),n}}async function ka(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,r=e.written(o),l=await ze({kind:e,name:e.new_name(t),text:at(r),from:i,about_to:h=>ke(t,h),is_own:({text:h})=>i!==void 0&&Ai(r,Z(h)??{})}),c=JSON.parse(l.text),p=fa(r,c),m=t.now===o?c:p(t.now);xe(e,n),y(t,{id:l.file,file:l.file,version:l.version,shipped:!1,now:m,saved:c}),H(t)&&ke(t),i!==void 0&&kt("copied",{file:t,from:i,renamed:p})}async function xa(t){let{version:e,now:n}=t,o=at(t.kind.written(n));y(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{Bi(t,n,(await uo({file:t.file,version:e,text:o})).version)}catch(i){if(!(i instanceof w)||i.status!==409)throw i;Ta(t,i.answer),H(t)&&!t.theirs&&await xa(t)}}function Bi(t,e,n){y(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),H(t)?ke(t):xe(t.kind,t.id),ho(t.kind.list,t.file,e)}function Ta(t,{version:e,text:n}){if(n===at(t.kind.written(t.now)))return Bi(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);y(t,{unanswered:[]}),o?y(t,{version:e,saved:void 0,theirs:void 0}):Sa(t,{version:e,text:n})}function Sa(t,{version:e,text:n}){y(t,{theirs:{version:e,text:n}}),ke(t),Mt(`${t.file} was changed outside this page. Say which is to stay.`),kt("conflict",{file:t})}function Ra(t){if(!t.theirs)return;let e=Z(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return y(t,{failed:n})}kt("giving_way",{file:t}),y(t,{set_aside:t.now,now:e}),Bi(t,e,t.theirs.version),kt("gave_way",{file:t})}function Aa(t){t.theirs&&(y(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),ke(t),kt("unwritten",{file:t}))}function Pa(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t;Ot(t,e),y(t,{set_aside:n})}var Da=t=>(t.theirs??t).version,Fa=t=>t.shipped||!t.file?[]:[[t.file,Da(t)]];async function Ii(t,e,n,o){let i=t.file,r=()=>Da(t)===e&&t.file===i;if(!r()||(await Ci(t),!r()))return!1;o(),await Wi();let l=await Dp(i,n);return await Ci(t),r()&&(Ta(t,l),H(t)&&!t.theirs&&kt("unwritten",{file:t})),!0}async function Dp(t,e){let n=await e(t);return n===null?{version:n,text:null}:$t(t)}var Wi=()=>new Promise(t=>setTimeout(t,Tp));var Fp=300,Mp=1200,_o="",Ma=0;function Dn(){let t={run:{file:a.run,now:a.run.now}};for(let e of st){let n=a.formulas[e];n&&(t[e]={file:n,now:n.now})}return t}function ji(t=""){let e=performance.now();t&&t===_o&&e-Ma<=Mp&&a.past.length||Ni(Dn()),f({future:[]}),_o=t,Ma=e}var Ni=t=>f({past:[...a.past,t].slice(-Fp)});function $o(t){Ni(Oa(Dn(),t,()=>t.saved??{}))}function Oa(t,e,n){let o=Object.entries(t).map(([i,r])=>r.file===e?[i,{file:e,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function Ui(t,e){let n=o=>o.map(i=>Oa(i,t,e));f({past:n(a.past),future:n(a.future)})}function He(){let t=a.past.at(-1);t&&(f({past:a.past.slice(0,-1),future:[...a.future,Dn()]}),Ea(t,"Undone"))}function bo(){let t=a.future.at(-1);t&&(f({past:[...a.past,Dn()],future:a.future.slice(0,-1)}),Ea(t,"Done again"))}function Ea(t,e){_o="",f({typed:void 0});for(let n of[...st,"run"])Op(n,t);Mt(e)}function Op(t,e){let n=e[t],o=t==="run"?n?.file===a.run:a.formulas[t]!==void 0;!n||!o||(t!=="run"&&Ut(t,n.file),n.file.now!==n.now&&Ot(n.file,n.now))}var Ep=t=>t===a.run||st.some(e=>a.formulas[e]===t);jt("giving_way",({file:t})=>{Ep(t)&&(_o="",Ni(Dn()),f({typed:void 0}))});jt("copied",({file:t,renamed:e})=>Ui(t,e));var Je=t=>ma(a.run.file,t);function te(t,e){let n=Je(t);return e?.some(o=>o.file===n)?n:t}async function Te(){for(let t of["pour","pipe"]){let e=_(a.run.now,`/${t}/formula`);typeof e=="string"&&e?await Cp(t,te(e,a.files?.formulas)):Ut(t,void 0)}}async function Cp(t,e){if(a.formulas[t]?.file===e)return;let n=st.map(o=>a.formulas[o]).find(o=>o?.file===e);if(Ut(t,n),!n)try{let o=await zi(e);Ut(t,o),H(o)&&kt("unwritten",{file:o}),o.theirs&&kt("conflict",{file:o})}catch(o){if(!(o instanceof w||o instanceof SyntaxError))throw o}}async function zi(t){let e=await Xt(fo,t);return H(e)&&$o(e),e}function wo(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=r=>20+e+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:c,material:p}]})=>({name:r,positions:new Float32Array(t,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(t,o(c),i(c)),colour:n.materials[p].pbrMetallicRoughness.baseColorFactor}))}function La(t,e,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:c,indices:p}=t;for(let m=0;m<p.length;m+=3){let h=[];for(let $=0;$<3;++$){let x=3*p[m+$],P=3*p[m+($+1)%3],F=c[x+i]-e,gt=c[P+i]-e;if(F>0==gt>0)continue;let ks=F/(F-gt),xs=[1e3*(c[x]+ks*(c[P]-c[x])),1e3*r*(c[x+o]+ks*(c[P+o]-c[x+o]))];F>0?h.push(xs):h.unshift(xs)}h.length===2&&l.push([h[0],h[1]])}return l}function Ba(t){let e=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of t){let r=e(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of t){let r=[],l=n.get(e(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(e(l[1]))?.shift();r.length>2&&o.push(r)}return o}function Hi(t){let e=t.positions,[n,o,i,r,l,c]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let m=0;m<e.length;m+=3)i=Math.min(i,e[m]),r=Math.max(r,e[m]),l=Math.min(l,e[m+1]),c=Math.max(c,e[m+1]),n=Math.min(n,e[m+2]),o=Math.max(o,e[m+2]);let p=n+(o-n)*.50137;return{loops:Ba(La(t,p)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*c,cut_y:-1e3*p}}function Ia(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(r=>Ba(La(t,n+r*o,"level"))).reduce((r,l)=>Ca(l)>1.001*Ca(r)?l:r)}function Ca(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function Ji(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([r,l],c)=>{let[p,m]=i[(c+1)%i.length];if(!(Math.min(l,m)>e||Math.max(l,m)<e))for(let h of l===m?[r,p]:[r+(e-l)/(m-l)*(p-r)])n=Math.min(n,h),o=Math.max(o,h)});return n<=o?[n,o]:[t.left,t.right]}var Wa=40,Lp=2e3,qi=0;async function ja(t){let e=await We({kind:"glb",gauge:t}),n=wo(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function qe(t){let[e,n]=await Promise.all([Gt(t),ja(t)]),o=Hi(n);return{gauge:e,outline:o,above:Ia(n,o)}}async function Bp(t){let{pockets:e}=await Gt(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:Wa},(i,r)=>`${(n*(r+1)/Wa).toFixed(4)} mm`);return Gt({...t,depth:o})}function Et(){Ip()}async function Ip(){let t=_(a.run.now,"/pour/mould");if(typeof t!="string")return;let e=++qi,n=te(t,a.files?.moulds);try{let[o,i]=await Promise.all([Bp({file:n}),ja({file:n})]);e===qi&&f({measured:{mould:n,gauge:o,outline:Hi(i)},measuring_failed:void 0})}catch(o){if(e!==qi)return;if(!(o instanceof w))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Et,Lp)}}var Wp=30,Na=0,Ki=!1,Vi=!1;function Gi(t,e,n){let o=e==="mesh"?a.mesh:void 0;f({mould:{way:e,title:n,open:t,is_old:!1,shapes:{}},mesh:o,typed:void 0}),Yi()}var Se=()=>f({mould:void 0,mesh:void 0}),Ke=(t,e,n)=>Gi(Li(Nt,t),e,n);async function Ua(t,e){let n=await Xt(Nt,t,e?crypto.randomUUID():t),o=String(n.now.name??t);e&&y(n,{now:{...n.now,name:""}}),Gi(n,"form",e?`A copy of ${o}`:`Change ${o}`)}async function za({id:t,file:e,text:n}){let o=e?await Xt(Nt,e,t):Li(Nt,JSON.parse(n),t);Gi(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var L=()=>a.mould,S=()=>L().open.now,J=(t,e)=>Ot(L().open,W(S(),t,e)),jp=["name","note","owned","unmould_after"];function Qi(t){let e=S(),n=Object.keys({...t,...e}).filter(l=>t?.[l]!==e[l]);(!t||n.some(l=>!jp.includes(l)))&&y(L(),{is_old:!0});let i=n.some(l=>L().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(L().is_old||i||r)&&Yi()}function Yi(){clearTimeout(Na),Na=window.setTimeout(()=>{Np()},Wp)}async function Np(){if(Ki)return void(Vi=!0);let{mould:t}=a;if(!t)return;let e=t.open.now;if(!(!xt(e,"shape")&&!xt(e,"mesh"))){if(Rn(e).length)return y(t,{complaint:void 0});Ki=!0;try{let n=Nt.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await qe(o);t.open.now===e&&y(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof w))throw n;t.open.now===e&&Zi(n)}finally{Ki=!1,Vi&&Yi(),Vi=!1}}}function Zi(t){let{field:e,problem:n,remedy:o,keep:i,entry:r}=t.complaint,l=e?`${n}; ${o}`:t.message;y(L(),{complaint:{field:mo(S(),e),line:l,keep:i&&{...i,at:mo(S(),i.at)},about:r===void 0?void 0:mo(S(),`${e}/${r}`)}})}var Ha=t=>[...new Set(t.flatMap(e=>a.formulas[e]??[]))],Ja=t=>t.filter(e=>e.theirs),zt=t=>Ja(Ha(t==="apart"?["apart"]:["pour","pipe"]))[0],yo=()=>Ja([a.run,...Ha(st)]);var Fn=()=>a.formulas.apart?"apart":"run",qa=t=>f({dangers:{...a.dangers,[Fn()]:t}});function Ka(t){let e=t.cautions.filter(n=>n.severity==="danger");qa(e.map(({text:n,topic:o,batter:i,batch_pieces:r})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:r})))}function Va(t){t.lye_heavy&&qa([{text:ut(t),is_of_heat:!1}])}var Up=400,zp=2e3,vo=0;function Mn(){clearTimeout(vo),vo=window.setTimeout(()=>{Tt()},Up)}async function Tt(){clearTimeout(vo);let{run:t}=a;try{await Pn(t),H(t)&&!t.theirs&&t===a.run&&Mn()}catch(e){if(!(e instanceof w))throw e;e.may_pass&&(vo=window.setTimeout(()=>{Tt()},zp))}}var Ga=Promise.resolve();function Ve(){let t=Ga.then(Hp);return Ga=t.catch(()=>{}),t}async function Hp(){for(let t of st){let e=a.formulas[t];!e||!H(e)||e.theirs||(e.shipped&&t!=="apart"&&await wa(a.run),await Pn(e))}}function Qa(t){let e=a.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=te(String(n?.mould??""),a.files?.moulds);return{file:je("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:r,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...Jp(e)}}}function Jp(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}var St=new Map,On=new Set,qp={changed:{},unreadable:[]},Ge=()=>new Set(st.flatMap(t=>a.formulas[t]??[]));async function Ya(){let t=Kp(),e=new Set([...Ge()].map(({file:o})=>o));for(let o of St.keys())!t.has(o)&&!e.has(o)&&St.delete(o);for(let o of On)t.has(o)||On.delete(o);let n=[...t].filter(o=>!St.has(o));for(let[o,i]of await Za(n))St.has(o)||St.set(o,i)}async function Za(t){let e=t.filter(o=>!On.has(o)),n=e.length?await Ie(new Map(e.map(o=>[o,null]))):qp;return er(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var Xi=async t=>(await Za([t])).get(t)??null,tr=()=>new Map([...St].filter(([t])=>!On.has(t)));function Kp(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(Je(o)),o.includes("..")||t.add(o))},n=a.run.now;t.add(Je("studio.json")),e(_(n,"/pour/mould")),e(_(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e(_(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||e(_(n,`/${o}/formula`));for(let{file:o,now:i}of Ge()){let r=i.own_fats;typeof r=="string"&&r&&t.add(kn(o)+r).add(r)}return t}function Xa(t,{changed:e}){let n=Object.keys(e).filter(o=>St.has(o)&&St.get(o)===t.get(o));for(let o of n)St.set(o,e[o]);return n}var er=t=>t.forEach(e=>On.add(e));function tl(){return[...Ge()].flatMap(({file:t,version:e})=>{let n=St.get(t)??e;return St.delete(t),n===e?[]:[t]})}var el=0,nr=()=>el;function or(t){++el,f({is_old:!0,changed_beside:t})}var Vp=1e3,Gp=450,ko=!1,Re=!1,ir=0;function Q(){f({is_old:!0}),ko?Re=!0:Qe()}async function Qe(){if(ko){Re=!0;return}ko=!0,nl(!1);try{do Re=!1,await Qp();while(Re)}finally{ko=!1,nl(!0),vt()}}var nl=t=>{document.documentElement.dataset.settled=String(t)};function ol(){let{run:t}=a,{apart:e}=a.formulas,{file:n,now:o}=t;return()=>{let i=t===a.run&&(n===t.file||o===t.now);return e===a.formulas.apart&&(e!==void 0||i)}}async function Qp(){let t=ol();try{await Ve(),await Ya(),t=ol();let{apart:e}=a.formulas;if(zt(e?"apart":"run"))return f({is_old:!0});let n=nr(),o=e?Qa(e.file):{file:a.run.file,run:a.run.now},i=await ia(o);if(window.clearTimeout(ir),!t())return void(Re=!0);f({plan:i,planned:o,complaint:void 0}),Ka(i);let r=n===nr();f({is_old:Re||!r}),r&&f({changed_beside:void 0})}catch(e){if(!(e instanceof w))throw e;if(!t())return void(Re=!0);Yp(e)}}function Yp(t){f({is_old:!0}),window.clearTimeout(ir);let e=()=>{f({complaint:t.complaint}),Va(t.complaint)};a.complaint||!a.plan?e():ir=window.setTimeout(e,Gp),t.may_pass&&window.setTimeout(Q,Vp)}var xo=t=>Object.values(a.formulas).includes(t),il=t=>`${String(_(t,"/pour/formula"))}
${String(_(t,"/pipe/formula"))}`;function Zp(t,e){_(t,"/pour/mould")!==_(e,"/pour/mould")&&Et(),il(t)!==il(e)&&Te(),Q(),Mn()}var Xp=Q;function td(t,e){for(let n of["pour","pipe"]){if(a.formulas[n]!==t)continue;let o=`/${n}/formula`,i=r=>String(_(r,o)??"").endsWith(xn(e))?W(r,o,t.file):r;Ui(a.run,i),i(a.run.now)!==a.run.now&&Ot(a.run,i(a.run.now))}}function rl(){jt("edited",({file:t,before:e})=>{t===a.run?Zp(e,t.now):xo(t)?Xp():t===a.mould?.open&&Qi(e)}),jt("gave_way",({file:t})=>{if(t===a.mould?.open)return Qi();t===a.run&&(Et(),Te().then(Q)),Q()}),jt("unwritten",({file:t})=>{t===a.run?Tt():xo(t)&&Q()}),jt("conflict",({file:t})=>{xo(t)&&f({is_old:!0})}),jt("copied",({file:t,from:e})=>{xo(t)&&td(t,e),t===a.run&&(localStorage.setItem("run",t.file),Q())})}var En=()=>f({own_fats:{}});function Ye(t){let e=rr(t);return Array.isArray(e)?[...e,...a.fats]:a.fats}function rr(t){let e=a.formulas[t],n=_(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=`${e.file}
${n}`,i=a.own_fats[o];return i||(sl(o,"waiting"),ed(n,e.file).then(r=>sl(o,r)),"waiting")}var sl=(t,e)=>f({own_fats:{...a.own_fats,[t]:e}});async function ed(t,e){for(let n of new Set([kn(e)+t,t])){let o=await nd(n);if(Array.isArray(o?.fats))return o.fats.map(od)}return"none"}async function nd(t){try{return Z((await $t(t)).text)}catch{return}}var od=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:id(n)});function id(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var Ze=[],Cn;function To(){Ze.length=0;for(let{file:t,shipped:e}of a.files?.moulds??[])e||Ze.push(t);Cn===void 0&&ll()}function al(t){let e=a.own_moulds[t];return!e&&t!==Cn&&!Ze.includes(t)&&Ze.push(t),Cn===void 0&&Ze.length&&ll(),e}async function ll(){for(;(Cn=Ze.shift())!==void 0;){let t=Cn,e=await rd(t);f({own_moulds:{...a.own_moulds,[t]:e}})}}async function rd(t){try{let{pockets:e}=await Gt({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof w))throw e;let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var cl=()=>f({own_tips:{}}),sr=!1;function pl(){return!a.tips&&!sr&&(sr=!0,ua().then(t=>f({tips:t}),ml).finally(()=>sr=!1)),a.tips??[]}function dl(t){let e=Je(t),n=a.own_tips[e];return n||!t||a.typed?n??[]:(ul(e,[]),$t(e).then(({text:o})=>ul(e,sd(o)),ml),[])}var ul=(t,e)=>f({own_tips:{...a.own_tips,[t]:e}});function sd(t){let e=Z(t)?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function ml(t){if(!(t instanceof w))throw t}var So=300,ad=5e3,$l=2e3,ld=500,fl=!1,Ln=new AbortController,bl=()=>Ln.abort(),wl=()=>document.visibilityState==="hidden";function yl(){if(fl)return;fl=!0;let t=async()=>{Ln=new AbortController;let e=await ud(Ln).then(()=>wl()?ad:So,()=>Ln.signal.aborted?So:$l);await hl(So),await hl(e-So,Ln.signal),t()};t()}var hl=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),vl=()=>[a.run,...a.mould?[a.mould.open]:[],...Ge()],kl=()=>new Map(vl().flatMap(Fa)),gl=()=>JSON.stringify([[...kl().keys()],[...tr().keys()]]);async function ud(t){let[e]=tl();e!==void 0&&await _l(e);let[n,o]=[kl(),tr()],i=new Map([...o,...n]),r=[...o].every(([p,m])=>i.get(p)===m),l=r&&!wl()?await cd(i,t):await Ie(i);er(l.unreadable),await pd(n,l);let[c]=Xa(o,r?l:await Ie(o));c!==void 0&&await _l(c)}async function cd(t,e){let[n,o]=[gl(),Date.now()],i=window.setInterval(()=>{(gl()!==n||Date.now()-o>Ti+$l)&&e.abort()},ld);try{return await oa(t,e.signal)}finally{window.clearInterval(i)}}async function pd(t,{changed:e}){let n=Ge();for(let o of vl()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await dd(o,i):await Ii(o,i,Xi,()=>{}))}}async function dd(t,e){await Ii(t,e,Xi,()=>or(t.file))&&(En(),Q())}async function _l(t){or(t),await Wi(),En(),cl(),f({measured:void 0}),Et(),To(),await Te(),Q()}var xl="examples/spring_cups.run.json";async function Tl(){let t=await Be();f({files:t});try{await Xe(md(t))}catch(o){let i=o instanceof w?o.message:`The run opened last is no run any more: ${String(o)}`;f({fault:i,view:"start"}),localStorage.removeItem("run")}let[e,n]=await Promise.all([aa(),la()]);f({fats:e,catalogue:n})}function md(t){let e=localStorage.getItem("run"),n=i=>t.runs.some(r=>r.file===i);return t.open?t.open:e&&n(e)?e:t.runs.find(i=>!i.shipped)?.file??(n(xl)?xl:t.runs[0]?.file??"")}async function Xe(t){if(!t)return f({view:"start"});a.run.file&&H(a.run)&&await Tt();let e=await Xt(An,t);f({view:"run",run:e,formulas:{},past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,batch:0,complaint:void 0,typed:void 0,measured:void 0}),localStorage.setItem("run",e.file),H(e)&&($o(e),Mn());let n=Qe();Et(),await Promise.all([n,Te()]),yl()}var fd=()=>(a.files?.studios??[]).some(t=>t.file==="studio.json");async function Sl(t){let e=a.run.now,n=e.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.cavities,pour:{mould:t.mould,formula:t.formula,line:{below_brim:t.deep_mm>15?"5 mm":"0 mm"}}};fd()||(o.note=`Losses, scales and spoilage were taken over from "${String(e.name)}": check them.`,o.spoilage=e.spoilage??"0 %",o.losses={pour:n.pour??{}},o.scales=e.scales??{},e.money&&!a.run.shipped&&(o.money=e.money));let{file:i}=await ze({kind:An,name:Qt(t.name,".run.json"),text:at(o)});await Xe(i)}var ar=s`<span aria-hidden="true">⚠</span> Danger`;function Bn(t,e="",n){let o=Ae(t,n);return o.length?s`<div class="dangers" id=${e||u}>
    ${o.map(i=>s`<p class="danger"><strong>${ar}</strong> ${i}</p>`)}
  </div>`:u}function Ae(t,e){let n=t==="pour"?"pipe":"pour";return a.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function Rl(){let t=a.view==="start"||Fn()==="apart",e=a.dangers.run.map(({text:n})=>({from:t?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var lr=()=>Rl().length>0;function Al(){let t=Rl(),e=_d();return!t.length&&!e?u:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?s`<div role="alert" class="dangers">
            ${t.map(({from:n,text:o})=>s`<p class="danger"><strong>${ar}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${e?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${hd()?s`<button type="button" @click=${gd}>To the question</button>`:u}
          </div>`:u}
  </section>`}var hd=()=>zt(Fn())!==void 0&&a.view!=="start";function gd(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function _d(){if(!a.run.file||a.view==="reading")return"";let t=zt(Fn());return t?`${t.file} was changed outside this page: what is struck through is of neither text. Say which is to stay.`:a.is_old&&a.changed_beside?`${a.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}var ur=t=>t==="run"?a.run:a.formulas[t],cr=t=>ur(t)?.now,g=(t,e)=>_(cr(t),e),j=(t,e)=>String(g(t,e)??"");function ee(t,e){let n=g(t,e);return Array.isArray(n)?n:[]}function U(t,e,n){let o=g(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function V(t,e,n){let o=ur(t);!o||_(o.now,e)===n||(ji(`${t} ${e}`),Ot(o,W(o.now,e,n)))}function Pl(t,e){let n=ur(t);n&&(ji(),f({typed:void 0}),Ot(n,e(n.now)))}var $d="examples/plain_bars.run.json";function tn(t){En(),f({view:"formula",formula_of:t,picking:void 0,typed:void 0}),window.scrollTo(0,0),requestAnimationFrame(()=>document.querySelector("#formula-title")?.focus({preventScroll:!0}))}async function pr(t){let e=["pour","pipe"].find(n=>a.run.file&&a.formulas[n]?.file===t);if(e)return tn(e);a.run.file||await Xe($d),await bd(t)}async function bd(t){let e={past:a.past,future:a.future};f({run_steps:e,past:[],future:[]});try{Ut("apart",await zi(t))}catch(n){throw f({...e,run_steps:void 0}),n}f({plan:void 0,complaint:void 0}),tn("apart"),Qe()}async function In(){let t=a.formulas.apart!==void 0;return t&&!await wd()?!1:(f({view:"run",typed:void 0}),t&&await Qe(),window.scrollTo(0,0),!0)}async function wd(){try{await Ve()}catch(e){if(!(e instanceof w))throw e;return f({complaint:e.complaint}),!1}if(a.formulas.apart?.theirs)return Mt("Say first which text of the formula is to stay."),window.scrollTo(0,0),!1;Ut("apart",void 0);let t={...a.dangers,apart:[]};return f({dangers:t,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function dr(t){let{file:e}=a.formulas.apart;await In()&&V("run",`/${t}/formula`,e)}var yd=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Dl=t=>Ml(yd(t));async function Fl(t,e){let{$schema:n,...o}=JSON.parse((await $t(t)).text);await Ml({...o,name:e},t)}async function Ml(t,e){let n=Qt(String(t.name),".formula.json"),{file:o}=await ze({kind:fo,name:n,text:at(t),from:e});await pr(o)}function mr(t){return Math.min(a.batch,t.batches.length-1)}function Ro(t){let{pieces:e,batches:n,batch_limits:o,around:i,...r}=t,l=mr(t),c=n[l],{pour:p,pipe:m,dust:h,lye_pot:$,bottles:x}=c;return{...r,pour:p,pipe:m,dust:h,lye_pot:$,bottles:x,batch:c,place:`batches.${l}`,whippings:m?.whippings??[],whole:t}}var it=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,vd=t=>t.cut?["loaf","loaves"]:["cast","casts"];function Rt(t,{pieces:e,casts:n}){let o=t.cut?it(e,"bar"):it(e,"piece");return n===e?o:`${o} from ${it(n,...vd(t))}`}var Wn=t=>t===1?"once":`${t} times`,en=t=>t.batches.length>1,G=t=>t.pieces.batches>1;function fr(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}function Ol(t,{count:e,numbers:n}){return G(t)?en(t)?`made ${Wn(e)}: ${e===1?"batch":"batches"} ${fr(n.map(String))} of ${t.pieces.batches}`:`made ${Wn(e)}`:""}function pt(t){return G(t.whole)?`one batch, ${Rt(t.whole,t.batch)}`:""}var El=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function hr(t,e){return El(t)?`${Rt(t.whole,e)}${e.count>1?`, whipped ${Wn(e.count)}`:""}`:""}function jn(t,e){let n=hr(t,e);return n&&`one whipping: ${n}`}var Ao=t=>G(t.whole)||El(t),Po=(t,e)=>`${it(t,"filling")} of ${it(e,"cavity","cavities")}`;var Fo=28.349523125,Il=25.4,kd=29.5735295625;function Ct(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function v(t,e){return xd(Ct(t,e))}var xd=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function Ht(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${Ct(t,e)} %`:gr(t)?"just below 0 %":"0.0 %"}var gr=t=>t<0||Object.is(t,-0),Wl=t=>Math.abs(t-Math.round(t))<1e-6;function Cl(t){return t?[0,1,2,3].find(e=>Wl(t*10**e))??3:0}function Ll(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function Td(t){return[0,1,2].find(e=>t.every(n=>Wl(n*10**e)))??3}function Mo(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function lt(t,e){let n=r=>t[`${e}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-Td([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var jl=.001;function Do(t,e,n,o,i=1e-9){let r=10**n;return Ct(o==="nearest"?t/e:Math.floor((t+i)/e*r)/r,n)}var Bl=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function Sd(t){if(!Bl.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return Bl.find(e=>Math.abs(e*Fo-t)<.6*jl)}function z(t,e,n="nearest"){let o=e.scale_step_g||.1,i=Sd(o),r=Math.min(.6*jl,o/2),l=i?Do(e.g,1,Ll(o),n):Do(e.g,1,Cl(o),n,r),c=i?Do(e.g,Fo,Cl(i),n,r):Do(e.g,Fo,Ll(o/Fo),n),[p,m]=[`${e.g_text??l} g`,`${e.oz_text??c} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[m,p]:Mo(t,p,m)}var D=(t,e,n=1,o="nearest")=>z(t,{g:e,scale_step_g:10**-n},o);function Y(t,e,n=1){return Mo(t,`${Ct(e,n)} ml`,`${Ct(e/kd,2)} US fl oz`)}function X(t,e){return Mo(t,`${v(e,1)} mm`,Rd(e))}function Rd(t){let e=Math.round(Math.abs(t)/Il*16),n=t<0&&e?"-":"",o=e%16,i=16;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(e/16),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var _r=([t])=>t,A=([t,e])=>e?`${t} (${e})`:t;function Nl(t,e){return Mo(t,`${Ct(e,0)} \xB0C`,`${Ct(e*1.8+32,0)} \xB0F`)}function nn(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??Il;return n*o}function on(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var Oo=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function ne(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}var Ul=t=>t.goes_into==="lye",zl=({role:t})=>t==="alkali",Ad=t=>zl(t)?"down":"nearest",Jt=(t,e)=>z(t,e,Ad(e));function rn(t){let e=t.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>Ul(i)),n=({one:i})=>i.role==="water",o=({one:i})=>zl(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function Eo(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!Ul(e))}function sn(t,e=()=>{}){if(!t.theirs)return u;let n=t.theirs.text===null,o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{Aa(t),e()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>Another hand or tab wrote the file. Nothing typed here was written over it. Which is to stay?</p>
    ${t.failed?s`<p class="complaint" role="status">Not taken: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?u:s`<button type="button" @click=${()=>Ra(t)}>Load the saved file</button>`}
      <button type="button" @click=${i}>Overwrite it with this page</button>
    </div>
  </section>`}function Hl(t){return t.theirs||!t.set_aside?u:s`<section class="banner" aria-label="What you typed">
    <p>This is what another hand wrote. What you typed is still here.</p>
    <button type="button" @click=${()=>Pa(t)}>Change to the other text</button>
  </section>`}var Pe={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Jl=t=>(...e)=>({_$litDirective$:t,values:e}),Co=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:Uw}=zs;var ql=t=>t.strings===void 0;var Pd={},Kl=(t,e=Pd)=>t._$AH=e;var tt=Jl(class extends Co{constructor(t){if(super(t),t.type!==Pe.PROPERTY&&t.type!==Pe.ATTRIBUTE&&t.type!==Pe.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!ql(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===_t||e===u)return e;let n=t.element,o=t.name;if(t.type===Pe.PROPERTY){if(e===n[o])return _t}else if(t.type===Pe.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return _t}else if(t.type===Pe.ATTRIBUTE&&n.getAttribute(o)===e+"")return _t;return Kl(t),e}});var q=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function $r(t,e){return _(cr(t),e)}function Lt(t,e){let n=a.complaint;if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return an(t)?ut(n):void 0}function et(t,e){return a.complaint?.field===e?Lt(t,e):void 0}function an(t){let e=a.complaint,n=t==="run"?a.run.file:a.formulas[t]?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function Dd(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys($r(t,n)??{}).length>1?e:n}function oe(){let t=a.complaint;if(t)for(let e of["run",...st])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Lt(e,n)&&document.getElementById(q(e,n));if(o)return o}}function Fd(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=Md(t,n);return o&&Oo(e)?`${e.trim()} ${o}`:e}function Md(t,e){return on($r(e,t.at))||t.unit||""}var dt=(t,e,n)=>e||n?s`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,br=!1;addEventListener("pointerdown",()=>br=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>br=!1,!0);var Vl=()=>f({typed:void 0});function wr(){br?addEventListener("pointerup",()=>setTimeout(Vl),{once:!0}):Vl()}function d(t){let e=t.of??"run",n=q(e,t.at),o=$r(e,t.at),i=a.typed?.key===n?a.typed.text:o===void 0?"":String(o),r=Lt(e,t.at),l=m=>{let h=m.target.value;f({typed:{key:n,text:h}});let $=Fd(t,h);V(e,$===void 0&&t.takes_part?Dd(e,t.at):t.at,$)},p=(a.typed?.key===n&&typeof o=="string"&&o!==i?`taken as ${o}`:"")||t.hint;return s`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${r?"wants":""}"
  >
    <label for=${n}>${t.label}</label>
    <input
      id=${n}
      .value=${tt(i)}
      @input=${l}
      @blur=${wr}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${r?"true":"false"}
      aria-describedby=${[r||p?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${dt(n,r,p)}
  </div>`}function yr(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var bt=t=>()=>document.getElementById(t),re=(t,e)=>bt(q(t,e)),De=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),Od=()=>document.activeElement;function Lo(t){requestAnimationFrame(()=>yr(t()))}function ln(t,e,n,o=Od){Mt(e),Pl(t,n),Lo(o)}function K(t,e,n,o,i){ln(t,e,r=>W(r,n,o),i)}var ie=(t,e,n)=>`${q(t,e)}-${n}`;function O(t,e){let n=et(t,e);return n?s`<p id=${q(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var Gl=(t,e,n)=>e.map(([o,i])=>s`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function nt(t,e,n,o){return s`<div class="choice" role="group" aria-label=${t}>${Gl(e,n,o)}</div>`}function b({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:c,then:p,hint:m}){let h=i?ie(t,n,e.replaceAll(/\W+/g,"-")):q(t,o),$=i?void 0:et(t,o),x=P=>{if(P===r)return;let F=l.find(([gt])=>gt===P)[1];K(t,`${e}: ${F}`,n,c(P),p&&re(t,p(P)))};return s`<div class="field asked ${$?"wants":""}">
    <p class="question" id="${h}-label">${e}</p>
    <div
      class="choice"
      role="group"
      id=${h}
      tabindex="-1"
      aria-labelledby="${h}-label"
      aria-describedby=${$||m?`${h}-said`:u}
    >
      ${Gl(r,l,x)}
    </div>
    ${dt(h,$,m)}
  </div>`}function vr(t,e,n,o){let i=q("run",t),r=et("run",t),l=()=>K("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return s`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${r?`${i}-said`:u}
        @click=${l}
      >
        ${e}
      </button>
    </div>
    ${dt(i,r)}`}function At({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:c}){let p=q(e,n),m=Lt(e,n),h=l??j(e,n),$=!h||o.some(([F])=>F===h),x=[["",i],...$?[]:[[h,h]],...o];return s`<div class="field choose ${m?"wants":""}">
    <label for=${p}>${t}</label>
    <select
      id=${p}
      @change=${F=>{let gt=F.target.value;c?c(gt):V(e,n,gt||!r?gt:void 0)}}
      aria-invalid=${m?"true":"false"}
      aria-describedby=${m?`${p}-said`:u}
    >
      ${x.filter(([F])=>F||r||!h).map(([F,gt])=>s`<option value=${F} .selected=${tt(F===h)}>${gt}</option>`)}</select
    >${dt(p,m)}
  </div>`}function qt(t,e,n=[]){let o=te(j("run",e),n);return At({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function mt({of:t="run",at:e,name:n,title:o,add:i,blank:r,body:l}){let c=ie(t,e,"part"),p=ie(t,e,"add");return g(t,e)===void 0?s`<p class="choice">
      <button type="button" id=${p} @click=${()=>K(t,`${o} added`,e,r,De(c))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${c} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>K(t,`${o} removed`,e,void 0,bt(p))}
      >
        Remove
      </button>
    </div>
    ${O(t,e)} ${l()}
  </div>`}var Ql=(t,e)=>`folded ${t} ${e}`,Yl=(t,e)=>Oi(Ql(t,e));function R({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:r}){let l=Ql(t,e);(i||n.some(m=>Lt(t,m)))&&Oi(l);let c=a.open.has(l);return s`<details .open=${c}>
    <summary @click=${m=>{m.preventDefault(),Ue("open",l)}}>${o}</summary>
    ${c?s`<div class="folded">${r()}</div>`:u}
  </details>`}var T=({of:t="run",at:e})=>ee(t,e),M=({of:t="run",at:e},n)=>ie(t,`${e}/${n}`,"item"),Bo=({of:t="run",at:e},n,o)=>ie(t,`${e}/${n}`,o),Ed=({of:t="run",at:e})=>q(t,e);function Nn(t,e,n,o){let{of:i="run",at:r,stays:l,and:c=p=>p}=t;ln(i,e,p=>c(W(p,r,n.length||l?n:void 0),n.length),o)}function B(t,e,n){let o=T(t);Nn(t,`${n} added`,[...o,e],De(M(t,o.length)))}function Cd(t,e,n){let o=T(t).filter((l,c)=>c!==e),i=Math.min(e,o.length-1),r=o.length>(t.least??0);Nn(t,`${n} removed`,o,r?bt(Bo(t,i,"drop")):re(t.of??"run",t.at))}function Ld(t,e,n,o){let i=[...T(t)],[r]=i.splice(e,1);i.splice(e+n,0,r);let l=n<0?"earlier":"later",p=e+n===0||e+n===i.length-1?n<0?"later":"earlier":l;Nn(t,`${o} moved ${l}`,i,bt(Bo(t,e+n,p)))}function N(t,e,n){let o=T(t).length-1,i=o>=(t.least??0),r=t.in_order&&o>0;if(!i&&!r)return u;let l=(c,p,m)=>s`<button
      type="button"
      id=${Bo(t,e,p)}
      ?disabled=${m}
      aria-label="${n} ${p}"
      @click=${()=>Ld(t,e,c,n)}
    >
      ${c<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",e===0)} ${l(1,"later",e===o)}`:u}
    ${i?s`<button
            type="button"
            id=${Bo(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>Cd(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function I(t,e,n){let o=Ed(t),i=et(t.of??"run",t.at);return s`${dt(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}function Zl(t){let e=j(t,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${d({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F."})}
      ${d({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days."})}
    </div>
    ${jd(t)}
    ${R({of:t,name:"density",pointers:["/measured_density"],summary:`Density measured${e&&`: ${e}`}`,body:()=>d({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var Bd=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],Xl={after:"",mass:""},tu=3,Id={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:tu},()=>Xl)}}};function Wd(t){return g(t,"/drying/weighings")!==void 0?"weighed":g(t,"/drying")!==void 0?"law":g(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function jd(t){let e=Wd(t);return s`${b({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:Bd,puts:o=>({...U(t,"",["drying","water_lost_in_cure"]),...Id[o]})})}
  ${e==="share"?s`<div class="row">
          ${d({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?s`<div class="row">
          ${d({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${d({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?Nd(t):u}`}function Nd(t){let e={of:t,at:"/drying/weighings",least:tu};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${T(e).map((n,o)=>s`<div class="row named" id=${M(e,o)}>
          ${d({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${d({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${N(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${I(e,"One more weighing",()=>B(e,Xl,"weighing"))}`}var Ud=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Io=t=>Ye(t).map(e=>[e.id,e.name]),eu=["unsaid","Not given"],nu=["none","Holds none"],ou=t=>t===void 0?"unsaid":t==="none"?"none":"some",zd=t=>e=>e==="some"?t:e==="none"?"none":void 0;function iu(t,e){return kr(t,`${e}/contains_fat`,[eu,nu,["some","Holds fat"]],Io(t))}function kr(t,e,n,o){let i=ou(g(t,e)),r=n.some(([l])=>l===i)?i:void 0;return s`${b({of:t,question:"Fat in it",at:e,chosen:r,answers:n,puts:zd({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${At({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${d({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var Hd=[eu,nu,["some","Holds acid"],["typed","By what it takes up"]],Jd={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function xr(t,e){let n=`${e}/contains_acid`,o=g(t,`${n}/takes_up`)!==void 0?"typed":ou(g(t,n));return s`${b({of:t,question:"Acid in it",at:n,chosen:o,answers:Hd,puts:i=>Jd[i]})}
  ${o==="some"?s`<div class="row">
          ${At({label:"Which acid",of:t,at:`${n}/acid`,answers:Ud.map(i=>[i,i]),unsaid:"choose ..."})}
          ${d({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?s`<div class="row">
          ${d({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Tr(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Tr(t,e,n){let o=g(t,e)===!0?"yes":"no";return b({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var qd=["tsp/lb","tbsp/lb","tsp/kg"],Wo=["%","g/kg",...qd].flatMap(t=>[`${t} of fats`,`${t} of batter`]),su=[...Wo,"% of finished soap","g/kg of finished soap"];function ru(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function jo(t,e,n,o,i=!1){let r=q(t,e),[l,c]=ru(j(t,e),o),p=a.typed?.key===r?a.typed.text:l,m=Lt(t,e),h=(x,P)=>{let F=`${x.trim()} ${P}`.trim();V(t,e,i&&!x.trim()?void 0:F),vt()},$=x=>{let P=x.target.value,[F,gt]=ru(P,o);f({typed:{key:r,text:P}}),h(F,gt||c)};return s`<div class="field rate ${m?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${tt(p)}
        @input=${$}
        @blur=${wr}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${r}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${x=>h(p,x.target.value)}
      >
        <option value="" .selected=${tt(c==="")}>of what?</option>
        ${o.map(x=>s`<option value=${x} .selected=${tt(x===c)}>${x}</option>`)}
      </select>
    </div>
    ${dt(r,m)}
  </div>`}function Kd(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var Vd=.01+1e-9;function No(t,e){let{sum:n,unread:o}=Kd(e),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=Vd?`${t} add to ${i(n)}.`:r>0?`${t} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-r)} too much.`}var uu=(t,e)=>Ye(t).find(n=>n.id===e)?.name??e,Un=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),zo=t=>T(Un(t));function cu(t){let e=zo(t),n=a.picking?.of===t&&a.picking.row===e.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>Gd(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?No("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${n?du(t):I(Un(t),"Add a fat",()=>pu(t,e.length))} ${em(t)}
  </section>`}function Gd(t,e,n){let o=`/fats/${e}`,i=uu(t,String(n[e].fat??""))||"Which fat?",r=et(t,`${o}/fat`)??et(t,o),l=a.picking?.of===t&&a.picking.row===e;return s`<li class="formula-row" id=${M(Un(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${q(t,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?Sr():pu(t,e)}
      >
        ${i}
      </button>
      ${d({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${N(Un(t),e,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:u} ${l?du(t):u}
    ${R({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${Qd(n[e])}`,body:()=>Xd(t,e)})}
  </li>`}function pu(t,e){f({picking:{of:t,row:e,text:""}}),Lo(bt("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Sr(){let t=a.picking;f({picking:void 0}),t&&Lo(re(t.of,t.row<zo(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function au(t,e){let{row:n}=a.picking,o=zo(t);f({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};Nn(Un(t),`${uu(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],re(t,`/fats/${n}/share`))}var Uo=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function lu(t,e){let n=Uo(e).split(/\s+/).filter(Boolean),o=i=>n.every(r=>Uo(i).includes(r));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function du(t){let{row:e,text:n}=a.picking,o=zo(t).map(p=>p.fat),i=Ye(t).filter(p=>lu(p,n)!==void 0),r=i.filter(p=>!o.includes(p.id)||o[e]===p.id);return s`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input id="find-fat" .value=${n} @input=${p=>{a.picking.text=p.target.value,vt()}} @keydown=${p=>{p.key==="Escape"&&Sr();let m=r.length===1?r[0]:r.find(h=>Uo(h.name)===Uo(n.trim()));p.key==="Enter"&&m&&au(t,m.id)}} autocomplete="off" spellcheck="false" />
      </div>
      <button type="button" @click=${Sr}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?i.length===1?"One fat":`${i.length} fats`:"No fat of that name. One that is not here is described in a file of your own fats."}
    </p>
    <div class="choice">
      ${i.map(p=>{let m=o.includes(p.id)&&o[e]!==p.id,h=lu(p,n);return s`<button
          type="button"
          ?disabled=${m}
          aria-pressed=${o[e]===p.id?"true":u}
          @click=${()=>au(t,p.id)}
        >
          ${p.name}${h===p.name?"":`, ${h}`}${m?" (is in it)":""}
        </button>`})}
    </div>
  </div>`}function Qd(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var Yd=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],Zd={published:void 0,one:"",range:{low:"",typical:"",high:""}};function Xd(t,e){let n=`/fats/${e}/saponification_value`,o=g(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=g(t,`/fats/${e}/confirmed`)!==void 0,l=(c,p)=>d({label:c,of:t,at:p,number:!0,short:!0});return s` ${d({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${b({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:Yd,puts:c=>Zd[c],hint:tm(t,j(t,`/fats/${e}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||r?Tr(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function tm(t,e){let n=Ye(t).find(l=>l.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function em(t){let e=rr(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=j(t,"/own_fats");return R({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>d({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list above."})})}var mu="danger-of-superfat";function fu(t,e){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${d({label:"Superfat: of all that is fat, left without lye",of:t,at:"/superfat",unit:"%",described_by:Ae(t).length?mu:void 0})}
    </div>
    ${Bn(t,mu)} ${nm(t)} ${lm(t,e)}
  </section>`}function nm(t){let e=ee(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return s`${b({of:t,question:"Alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>om(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,r)=>im(t,i,r,e.length>1))}
  ${e.length>1?s`<p class="total" role="status">
          ${No("The two",e.map(i=>i.share))}
        </p>`:u}`}function om(t,e){let n=(o,i)=>({purity:"",...t.find(r=>r.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function im(t,e,n,o){let i=`/alkali/${n}`,r=String(e.alkali??""),l=et(t,i)??et(t,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?d({label:`${r}: share of the saponifying`,of:t,at:`${i}/share`,unit:"%",hint:"By equivalents, not by weight."}):u}
      ${d({label:`${r}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document."})}
    </div>
    ${R({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${rm(e.purity_range)}`,body:()=>sm(t,i)})}
  </div>`}var rm=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function sm(t,e){let n=`${e}/purity_range`,o=g(t,n)!==void 0;return s`${b({of:t,question:"Warranted range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${d({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${d({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var am={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function lm(t,e){let n=Object.keys(g(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(am);return s`${b({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:cm(e)})}
    <div class="row">${n.map(r=>um(t,r))}</div>`}function um(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?d({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?d({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):d({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function cm(t){if(!(!t||a.is_old))return`It now makes a strength of ${v(t.lye_strength_percent,1)} %; ${v(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${v(t.water_percent_of_fats,1)} % of the fats.`}function se(t,e,n){let o=pm(t,e);return R({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${mm(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${hu(t,`${e}/allergens`,"Allergen","Add an allergen",(i,r)=>fm(t,i,r))}
        ${d({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function pm(t,e){let n=ee(t,`${e}/allergens`).length;return[g(t,`${e}/inci`)===void 0?"":"INCI said",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Rr={name:"",share:""},dm={unsaid:void 0,one:"",many:[Rr]};function mm(t,e,n){let o=g(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...Rr,name:o}]:dm[l];return s`${b({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?d({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${hu(t,e,"INCI name","One more INCI name")}`:u}`}function fm(t,e,n){return b({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:g(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function hu(t,e,n,o,i){let r={of:t,at:e};return s`${T(r).map((l,c)=>s`<div class="row named" id=${M(r,c)}>
        ${d({label:`${n} ${c+1}`,of:t,at:`${e}/${c}/name`})}
        ${d({label:`Share ${c+1}`,of:t,at:`${e}/${c}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${c}`,c)??u} ${N(r,c,String(l.name||`${n} ${c+1}`))}
      </div>`)}
  ${I(r,o,()=>B(r,Rr,n))}`}var hm=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:xm},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:$m},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:bm},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:wm}];function gu(t){return hm.map(e=>{let n={of:t,at:`/${e.list}`},o=T(n),i=(r,l)=>s`<li class="formula-row" id=${M(n,l)}>
        ${_m(t,e,n,r,l)} ${e.row(t,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${e.aside}</p>`}
      ${I(n,e.add,()=>B(n,gm(e),e.add.replace("Add ","")))}
    </section>`})}function gm(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function _m(t,e,n,o,i){let r=`/${e.list}/${i}`,l=et(t,r),c=String(o.name||`number ${i+1} of the ${e.list}`);return s`${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${d({label:"Name",of:t,at:`${r}/name`})}
      ${e.list==="liquids"?u:jo(t,`${r}/rate`,"How much",Wo)}
      ${N(n,i,c)}
    </div>`}function Ar(t,e,n,o){let i=`${e}/goes_into`,r=g(t,i);return b({of:t,question:"Goes into",at:i,chosen:r,answers:n,puts:c=>c,hint:o||r?void 0:"The batter, unless you name another place."})}var _u=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Pr(t,e,n){let o=(l,c,p)=>l?`${c}${String(l)}${p}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${e}/${l}`);return R({of:t,name:`${e} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${d({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${d({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${jo(t,`${e}/limit`,"The most that the supplier's document allows",su,!0)}`})}function Dr(t,e,n,o){let i=(l,c)=>l===void 0?"":l==="none"?`no ${c}`:c,r=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return R({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${iu(t,e)} ${o?xr(t,e):u}`})}var Ho=(t,e,n)=>se(t,e,String(n.name||"it"));function $m(t,e,n){return s`${Ar(t,e,_u,!0)}
    <div class="folds">${Dr(t,e,n,!0)} ${Pr(t,e,n)} ${Ho(t,e,n)}</div>`}function $u(t,e,n){return R({of:t,name:`${e} place`,pointers:[`${e}/goes_into`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>Ar(t,e,_u,!1)})}function bm(t,e,n){return s`<div class="folds">
    ${Pr(t,e,n)} ${Ho(t,e,n)} ${$u(t,e,n)} ${Dr(t,e,n,!1)}
  </div>`}function wm(t,e,n){return s`${vm(t,e)}
    <div class="folds">
      ${Pr(t,e,n)} ${Ho(t,e,n)} ${$u(t,e,n)} ${Dr(t,e,n,!0)}
    </div>`}var ym=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function vm(t,e){let n=`${e}/dispersed_in`,o=g(t,n)!==void 0,i=g(t,`${n}/from`);return s`${b({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${At({label:"Which oil",of:t,at:`${n}/fat`,answers:Io(t),unsaid:"choose ..."})}
            ${d({label:"g of oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,short:!0})}
          </div>
          ${b({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:ym,puts:l=>l,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var km=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function xm(t,e,n){let o=(i,r,l)=>R({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:r,body:l});return s`${Sm(t,e,n)}
    ${Ar(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${Am(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>Tm(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>xr(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>d({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Ho(t,e,n)}
    </div>`}function Tm(t,e){let n=g(t,e)===!0?"ice":"liquid";return b({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function Sm(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...U(t,e,["replaces","rate"]),[r]:""});return s`${b({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:Rm,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${d({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?jo(t,`${e}/rate`,"Rate",Wo):u}`}var Rm=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function Am(t,e){let n=`${e}/composition`,o=typeof g(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(c,p)=>d({label:c,of:t,at:`${n}/${p}`,unit:"%",short:!0});return s`${b({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:c=>c==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${kr(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Io(t)])}
          <div class="row">
            ${d({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${At({label:"Built-in figures of",of:t,at:n,answers:km.map(c=>[c,c]),unsaid:"choose ..."})}
        </div>`}`}var Fr=!1;function bu(t){let{plan:e,explanation:n}=a,o=n?.of!==e;return o&&!Fr&&Dm(),{workings:Pm(n?.workings,t),complaint:n?.complaint,is_old:o}}function Pm(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function Dm(){let{plan:t,planned:e}=a;if(!(!t||!e)){Fr=!0;try{let{how:n}=await ra(e);f({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof w))throw n;f({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{Fr=!1}}}function k({key:t,label:e,shown:n,of:o,working:i,size:r="plain",note:l}){let c=a.open.has(t),p=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return s`<div class="figure">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Ue("open",t)}
    >
      <span class="name">${e}${l?s`<small>${l}</small>`:u}</span>
      <span class="value ${r} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${c?s`<div class="sum" id=${p}>${i?wu(i):Fm(o)}</div>`:u}
  </div>`}var Fe=(t,e,n)=>k({key:t,label:e,shown:["",""],of:n});function Fm(t){let{workings:e,complaint:n,is_old:o}=bu(t);return e.length?s`<div class=${o?"old":""}>${e.map(wu)}</div>`:o?s`<p class="old" role="status">Asking how it is calculated ...</p>`:s`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function wu({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:r}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return s`<p class="formula">${t}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${e.map(({name:c,value:p,from:m})=>s`<tr>
              <th scope="row">${c}</th>
              <td>${p}</td>
              <td>${m??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?s`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:u}
    ${r.length?s`<p class="sources">From: ${r.join("; ")}.</p>`:u}`}var cn="/pipe/beads",ot=`${cn}/tip`,ae={at:`${cn}/moves`,in_order:!0},Mr="\0own",ku={tip:"",bead_to_opening:"",moves:[]},Pt=(t,e)=>({name:t,label:e,kind:"length"}),yu={name:"count",label:"How many",kind:"count"},vu=Pt("circle_radius","Radius of their circle"),Er={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Pt("diameter","Across"),Pt("height","High")]},ring:{words:"Ring",does:"One closed turn.",measures:[Pt("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Pt("start_radius","Radius at the start"),Pt("end_radius","Radius at the end"),Pt("rise","Climbs by")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Pt("length","Long")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[yu,vu,Pt("height","High")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[yu,vu,Pt("length","Long")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Pt("length","Long"),{name:"aside",label:"Beside the middle by",kind:"signed",optional:!0}]}};function xu(t){return s`${Om()} ${Cr()?Cm():u}
    ${d({label:"Bead \xF7 tip opening",at:`${cn}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${T(ae).map((e,n)=>Wm(e,n,t))}</div>
    ${Um()}`}var Cr=()=>typeof g("run",ot)=="object";function Mm(){let t=g("run",`${cn}/own_tips`);return t===void 0?pl():dl(String(t))}function Om(){let t=n=>n===Mr?K("run","a tip of your own",ot,{name:"",round:{radius:""}},Su):V("run",ot,n),e=Mm().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${At({label:"Tip",at:ot,answers:[...e,[Mr,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:Cr()?Mr:void 0})}
  ${Cr()?u:R({name:"tips",pointers:[`${cn}/own_tips`],summary:"Tips of a file of your own",body:()=>d({label:"File of tips",at:`${cn}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the tips that ship are offered."})})}`}var Tu=ie("run",ot,"own"),Su=De(Tu),Or=[["round","Round"],["star","Star"],["outline","Another outline"]],Jo={x:"",y:""},Em={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Jo,Jo,Jo]};function Cm(){let t=Or.map(([n])=>n).find(n=>g("run",`${ot}/${n}`)!==void 0),e=n=>({...U("run",ot,Or.map(([o])=>o)),[n]:Em[n]});return s`<div class="part" id=${Tu} role="group" aria-label="My own tip">
    ${O("run",ot)} ${d({label:"What you call the tip",at:`${ot}/name`})}
    ${b({question:"Opening of the tip",at:ot,is_told_elsewhere:!0,chosen:t,answers:Or,puts:e})}
    ${t?Bm(t):u}
    ${R({name:"hand",pointers:[un,`${ot}/note`],summary:"Correction for your hand",body:Lm})}
  </div>`}var un=`${ot}/hand`;function Lm(){let t=e=>g("run",e)!==void 0;return s`<div class="row">
      ${d({label:"Correction for your hand",at:`${un}/correction`,number:!0,short:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${t(`${un}/correction`)?d({label:"From so many trials",at:`${un}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${t(un)?s`<button
            type="button"
            @click=${()=>K("run","correction removed",un,void 0,Su)}
          >
            Leave the correction out
          </button>`:u}
    ${d({label:"Note on the tip",at:`${ot}/note`,optional:!0})}`}function Bm(t){if(t==="outline")return Im();let e=(n,o)=>d({label:o,at:`${ot}/${t}/${n}`,unit:"mm",short:!0});return s`<div class="row">
    ${t==="round"?e("radius","Radius of the opening"):s`${d({label:"Points",at:`${ot}/star/points`,count:!0,short:!0})}
          ${e("outer_radius","Radius to the points")} ${e("inner_radius","Radius to the notches")}`}
  </div>`}function Im(){let t={at:`${ot}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${T(t).map((e,n)=>s`<div class="row" id=${M(t,n)}>
          ${d({label:`Corner ${n+1}, x`,at:`${t.at}/${n}/x`,unit:"mm",short:!0})}
          ${d({label:`Corner ${n+1}, y`,at:`${t.at}/${n}/y`,unit:"mm",short:!0})}
          ${N(t,n,`corner ${n+1}`)}
        </div>`)}
    ${I(t,"One more corner",()=>B(t,Jo,"corner"))}`}function Wm(t,e,n){let o=Er[String(t.move)],i=`${ae.at}/${e}`,r=`${e+1}. ${o?.words??String(t.move)}`;return s`<div class="part" id=${M(ae,e)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${N(ae,e,r)}
    </div>
    ${O("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>jm(i,l))}
      ${d({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${Nm(e,n)}
  </div>`}function jm(t,{name:e,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return d({label:n,at:`${t}/${e}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function Nm(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==T(ae).length)return u;let i=o.length_mm>0?`${v(o.length_mm/10,1)} cm of bead`:"";return k({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:Y(a.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function Um(){let t=o=>({move:o,...Object.fromEntries(Er[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=q("run",ae.at),n=et("run",ae.at);return s`${dt(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(Er).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>B(ae,t(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var zm={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]};function zn(t,e){return zm[t].map(({name:n,label:o,unit:i,optional:r})=>d({label:e?`${e}: ${o.toLowerCase()}`:o,at:`/losses/${t}/${n}`,unit:i,short:!0,optional:r}))}var Hm=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]);function Hn(t){let e=`/${t}/temperatures`,n=(o,i)=>d({label:i,at:`${e}/${o}`,unit:a.units==="us"?"\xB0F":"\xB0C",optional:!0,short:!0});return R({name:e,pointers:[e],summary:"How warm",body:()=>s` <p class="hint">What you leave blank is left out. The lye shelf tells what follows.</p>
        ${O("run",e)}
        <div class="row">
          ${n("room_at","Room and dry alkali")} ${n("water_at","Water")}
          ${d({label:"Of the water, as ice",at:`${e}/ice_share`,unit:"%",optional:!0,short:!0})}
          ${n("lye_used_at","Lye when it is used")} ${n("fats_at","Fats")}
          ${n("batter_below","Batter must stay below")}
          ${At({label:"The lye cools in",at:`${e}/cooled_in`,answers:Hm,unsaid:"not given",optional:!0})}
        </div>`})}var Ru={holds:"",net:""},wt=()=>_(a.run.now,"/pipe")!==void 0;function Au(){let t=_(a.run.now,"/pour/formula")??"";ln("run","Topping added",n=>W(W(n,"/pipe",{formula:t,fills_headspace:"",whip:Ru}),"/losses/pipe",{bag:"",bowl_and_whisk:""}),bt("lane-pipe"))}function Jm(t){let e=Object.keys(_(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",_(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>_(o,i)===void 0?o:W(o,i,void 0),t)}function qm(){ln("run","Topping removed",Jm,bt("topping-back"))}function Pu(){let t=a.past.at(-1)?.run?.now;return!t||_(t,"/pipe")===void 0||wt()?u:s`<button type="button" id="topping-back" @click=${He}>Bring the topping back</button>`}function Lr(){return s`${Zm()} ${Hn("pipe")}
    <p class="choice"><button type="button" @click=${qm}>Take the topping away</button></p>`}function Br(t){return s`<h3>How large is the topping?</h3>
    ${O("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${mt({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:Ru},body:Km})}
      ${mt({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:Vm})}
    </div>
    ${mt({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:ku,body:()=>xu(t)})}
    ${t?Qm(t):u}`}function Km(){let t={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${T(t).map((e,n)=>s`<div class="row" id=${M(t,n)}>
            ${d({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${N(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${I(t,"One more trial",()=>B(t,"","trial"))}
    <div class="row">
      ${d({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${d({label:"Cup holds",at:"/pipe/trials/weigh_cup/holds",unit:"ml",short:!0})}
    </div>
    ${O("run","/pipe/trials/weigh_cup")}`}function Vm(){let t="/pipe/envelope",e=g("run",`${t}/form`);return s`${b({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${d({label:"Across",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${d({label:"High",at:`${t}/height`,unit:"mm",short:!0})}
      ${d({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var Gm={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function Qm(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>k({key:`pipe.by.${i}`,label:Gm[i],note:o(l),shown:Y(a.units,r),of:`pipe.visible_by.${i}_ml`}))}
    ${Ym(t)}`}function Ym(t){let e=t.visible_by?.suggested_correction;if(!e||a.is_old)return u;let n=v(e.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",r=i&&_(a.run.now,`${o}/correction`)!==e.correction,l=()=>K("run","correction kept",o,{correction:e.correction,trials:e.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function Ir(t){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${d({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g"})}
      ${d({label:"Cup holds",at:"/pipe/whip/holds",unit:"ml",short:!0})}
    </div>
    ${O("run","/pipe/whip")}
    ${d({label:"One bag holds",at:"/pipe/bag_holds",unit:"ml",optional:!0,hint:t?.loads?`${t.loads} bag loads`:void 0})}`}function Du(){return s`<h3>What is lost of it</h3>
    <div class="row">${zn("pipe")}</div>`}function Zm(){let t=(n,o,i,r=!1)=>d({label:n,at:o,unit:i,optional:r,short:!0});return R({name:"vessels",pointers:["/pipe/bowl","/pipe/pace","/pipe/lye_spoon"],summary:"Bowl, pace, lye by the spoon",body:()=>s` <div class="items">
        ${mt({at:"/pipe/bowl",name:"the bowl",title:"The bowl",add:"Say what the bowl holds",blank:{holds:""},body:()=>s`<div class="row">
              ${t("Bowl holds","/pipe/bowl/holds","l")}
              ${t("Smallest unwhipped amount the whisk reaches","/pipe/bowl/whisk_needs","ml",!0)}
            </div>`})}
        ${mt({at:"/pipe/pace",name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>s`<div class="row">
              ${t("Can be piped for","/pipe/pace/open_time","min")}
              ${t("To pipe one","/pipe/pace/time_per_piece","s")}
              ${t("To change the bag","/pipe/pace/time_per_bag_change","s",!0)}
            </div>`})}
        ${mt({at:"/pipe/lye_spoon",name:"the lye spoon",title:"Lye by the spoon",add:"Lye is whipped in by the spoon",blank:{holds:"",time_between:""},body:()=>s`<div class="row">
              ${t("Spoon holds","/pipe/lye_spoon/holds","ml")}
              ${t("From one spoonful to the next","/pipe/lye_spoon/time_between","s")}
            </div>`})}
      </div>`})}var[Mu,jr]=[440,270],[Jn,Wr,qo,pn]=[64,Mu-10,10,jr-52],Xm=6,tf=8;function Fu(t){let e=t/Xm,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,r)=>r*o)}var dn=t=>v(t,1);function Ou(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=c=>dn(Jn+(Wr-Jn)*c/n),r=c=>dn(pn-(pn-qo)*c/o),l=t.map(({depth_mm:c,volume_ml:p})=>`L${i(c)} ${r(p)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${Mu} ${jr}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${Fu(n).map(c=>E`<path class="grid" d="M${i(c)} ${qo}V${pn}" />
            <text x=${i(c)} y=${pn+20} text-anchor="middle">${dn(c)}</text>`)}
      ${Fu(o).map(c=>E`<path class="grid" d="M${Jn} ${r(c)}H${Wr}" />
            <text x=${Jn-8} y=${r(c)} text-anchor="end" dominant-baseline="middle">${dn(c)}</text>`)}
      ${E`<text x=${(Jn+Wr)/2} y=${jr-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(qo+pn)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(e)} ${qo}V${pn}" />`}
    </svg>
    ${ef(t)}`}function ef(t){let e=Math.max(1,Math.round(t.length/tf)),n=t.filter((o,i)=>(i+1)%e===0);return s`<details>
    <summary>The curve as a table</summary>
    <table class="levels">
      <caption>
        What one cavity holds to a depth
      </caption>
      <thead>
        <tr>
          <th scope="col">Depth, mm</th>
          <th scope="col">Volume, ml</th>
          <th scope="col">One millimetre more, ml</th>
        </tr>
      </thead>
      <tbody>
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:r})=>s`<tr>
              <th scope="row">${dn(o)}</th>
              <td>${dn(i)}</td>
              <td>${v(r,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var yt={at:"/decorations"},Ko=t=>`${yt.at}/${t}`,Me=t=>j("run",`${Ko(t)}/name`).trim()||`Decoration ${t+1}`,rt=()=>_(a.run.now,"/cut")!==void 0,Vo=t=>["mould","rod","drizzle"].find(e=>g("run",`${t}/${e}`)!==void 0),qn=t=>["per_piece","per_cast"].find(e=>g("run",`${t}/${e}`)!==void 0);var ft="/batch",mn="/pots",Kn=t=>`${t}/moulds_owned`;function Nr(){let t=[ft,mn,Kn("/pour")];return R({name:"batches",pointers:t,summary:`Batches, pots, moulds owned${nf()}`,body:()=>s` <p class="hint">What you leave blank sets no limit.</p>
        ${O("run",ft)} ${O("run",mn)}
        <div class="row">
          ${d({label:"Moulds like this owned",at:Kn("/pour"),count:!0,optional:!0,short:!0,hint:"Else as many as the mould's own file says."})}
          ${d({label:"Pot for the base holds",at:`${mn}/holds`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to two thirds."})}
          ${d({label:"Lye jug holds",at:`${mn}/lye_jug`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to half."})}
          ${of()} ${sf()}
        </div>
        ${b({question:"Cavities at each filling",at:ft,asked_at:`${ft}/fill`,chosen:g("run",`${ft}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:e=>Eu("fill",e==="full"?e:void 0)})}`})}function nf(){let[t,e,n,o,i]=[`${ft}/pieces`,`${ft}/casts`,`${mn}/holds`,`${mn}/lye_jug`,Kn("/pour")].map(l=>j("run",l)),r=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`,n&&`pot of ${n}`,o&&`lye jug of ${o}`,i&&it(Number(i),"mould")].filter(Boolean);return r.length?`: ${r.join(", ")}`:""}function Eu(t,e){let n=U("run",ft,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function of(){let t=g("run",`${ft}/casts`)!==void 0,e=(n,o)=>d({label:o,at:`${ft}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0});return rt()?g("run",`${ft}/pieces`)!==void 0?s`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${rf}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function rf(){K("run","Counted in loaves",ft,Eu("pieces",void 0))}function sf(){let t=`${ft}/whippings`;return!wt()&&g("run",t)===void 0?u:d({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var af=500,Ur=()=>_(a.run.now,"/cut")===void 0&&(a.plan?.pour.brimful_ml??0)>=af;function lf(){K("run","Cut it into bars","/cut",{bar:{},kerf:""},De(q("run","/cut/bar")))}function uf(){K("run","Left whole","/cut",void 0,bt("cut-into-bars"))}function zr(){return Ur()?s`<div class="choice">
    <button type="button" id="cut-into-bars" @click=${lf}>Cut it into bars</button>
  </div>`:u}var cf={loaf:{thickness:""},slab:{length:"",width:""}};function pf(){let t=g("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var df={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function Go(){let t=pf(),e=(o,i)=>d({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=j("run","/cut/along");return s` ${b({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>cf[o]})}
    <div class="row">
      ${t==="loaf"?d({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>d({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${d({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf is what each cut wastes: 0 mm for a wire.</p>
    ${t?b({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:df[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${uf}>Leave it whole</button>`}function mf(t,{at:e,figure:n}){let o=_(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function Qo(t,e,n){return e?s`<button type="button" @click=${()=>n(e.at,mf(t,e))}>It is really so: keep it</button>`:u}function Jr(){let t="/lye_pot",e=g("run",t)!==void 0;return!e&&!wt()?u:s`${vr(t,"Make one pot of lye solution for both",e,{})}
  ${e?d({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function Cu(){return s`<section class="shelf" aria-labelledby="extras-title">
    <h2 id="extras-title">Pot, bottles, label</h2>
    ${Jr()} ${qr()} ${Kr()}
  </section>`}function qr(t){let e={at:"/bottles"},n=T(e);return R({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is shared over the batters at one rate, never by
          halves.${t&&pt(t)?` Weights are of ${pt(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${e.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${M(e,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${N(e,i,l)}
            </div>
            ${O("run",r)}
            <div class="row">
              ${d({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${d({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${t?ff(t,i,l):u}
          </div>`})}
        ${I(e,"Use up a bottle",()=>B(e,{name:"",holds:""},"bottle"))}`})}function ff(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,r)=>k({key:`bottle.${e}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${v(i.percent_of_batter,2)} % of the batter`,shown:z(a.units,lt(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${r}.g`}))}function Kr(){return mt({at:"/label",name:"the label",title:"For the label",add:"Draft the label",blank:{market:""},body:hf})}function hf(){let t=g("run","/label/market"),e=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return s`${b({question:"Where it is sold",at:"/label",asked_at:"/label/market",chosen:t,answers:[["EU","In the EU"],["US","In the US"]],puts:gf})}
  ${b({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:e,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:_f})}
  ${e==="weighed"?$f():s`<div class="row">
          ${d({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${d({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${d({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${t==="EU"||g("run",Hr)!==void 0?vr(Hr,"With the e mark",g("run",Hr)===!0,!0):u}`}var Hr="/label/e_mark";function gf(t){return{...U("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function _f(t){let e=U("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function $f(){let t={at:"/label/weighed_pieces",least:3};return s`<div class="trials">
      ${T(t).map((e,n)=>s`<div class="row" id=${M(t,n)}>
            ${d({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${N(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${I(t,"One more piece",()=>B(t,"","piece"))}`}function le(t){let{whole:e,batch:n}=t,o=Ol(e,n);return s`<h3 class="batch-head of-plan ${en(e)?"of-sizes":""}">
      One batch: ${Rt(e,n)}${o?s`<span>, ${o}</span>`:u}
    </h3>
    ${en(e)?s`<div class="sizes">
            ${nt("Which batch is weighed",String(mr(e)),e.batches.map((i,r)=>[String(r),Rt(e,i)+(i.count>1?`, ${Wn(i.count)}`:"")]),bf)}
          </div>`:u}`}function bf(t){let e=a.plan;f({batch:Number(t)}),Mt(`One batch: ${Rt(e,e.batches[a.batch])}`)}function Lu(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,r=t.batches.map(p=>`${en(t)?`${p.count} of `:""}${Rt(t,p)}`),l=`Made in ${e} batches${en(t)?": ":" of "}${fr(r)}; ${Po(n,o)}.`,c=t.batch_limits.filter(p=>p.sets);return s`<div class="batches-told of-plan">
    ${G(t)?s`<p><b>${l}</b></p>`:u}
    ${i>0?s`<p>
            ${it(i,t.cut?"bar":"piece")} beyond the order ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${c.length?s`<p><span class="called">What sets a batch:</span> ${c.map(p=>p.text).join(" ")}</p>`:u}
    ${t.around.length?s`<p><span class="called">One fewer, one more:</span> ${t.around.map(p=>p.text).join(" ")}</p>`:u}
  </div>`}var fn=t=>y(a.printing,t);function Bu(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function Iu(t){if(!a.printing.is_working){fn({is_working:!0,told:"Making it ..."});try{await wf(),fn({told:await t()})}catch(e){fn({told:e instanceof Error?e.message:String(e)})}fn({is_working:!1})}}async function wf(){await Ve();let t=zt("run");if(t)throw new Error(`${t.file} was changed outside this page: say first which text is to stay.`)}var ue=(t,e)=>()=>Iu(async()=>{let n=URL.createObjectURL(await We(e));return Bu(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),yf=t=>()=>Iu(async()=>(Bu(await ca(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),vf=t=>{fn({paper:t}),localStorage.setItem("paper",t)},kf=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function Wu(t){let{batch:e}=a.printing;return G(t)&&e<=t.pieces.batches?e:0}function xf(t){if(!G(t))return u;let e=Wu(t),n=i=>fn({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${tt(i===e)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${kf(t).map(({number:i,one:r})=>o(i,`batch ${i} of ${t.pieces.batches}: ${Rt(t,r)}`))}
      </select>
    </div>
  </div>`}function ju(t){let{paper:e,is_working:n,told:o}=a.printing,i=a.run.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),r={file:a.run.file,run:a.run.now},l=a.measured?.mould,c={file:l,"below-brim":`${t.pour.below_brim_mm} mm`},p=Wu(t),m={plan:r,paper:e,...p?{batch:String(p)}:{}},h=($,x,P="")=>s`<button type="button" class=${P} ?disabled=${n} @click=${()=>{x()}}>${$}</button>`;return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${nt("Paper",e,[["A4","A4"],["Letter","Letter"]],vf)}
    ${xf(t)}
    <div class="choice">
      ${h("Bench sheet, to print",yf({kind:"sheet",...m}),"strong")}
      ${a.files?.makes_pdf?h("Bench sheet, PDF",ue(`${i}${p?` batch ${p}`:""}.pdf`,{kind:"sheet-pdf",...m})):""}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?h("Label draft",ue(`${i} label.txt`,{kind:"label",plan:r})):""}
      ${h("Drawing of the pour, true size",ue(`${i} pour.svg`,{kind:"picture",plan:r}))}
      ${h("Drawing of the piece",ue(`${i}.svg`,{kind:"piece",plan:r}))}
      ${h("Whole piece, GLB",ue(`${i}.glb`,{kind:"glb",plan:r}))}
      ${h("Whole piece, STL",ue(`${i}.stl`,{kind:"stl",plan:r}))}
      ${l?s`${h("Filled cavity, GLB",ue(`${i} cavity.glb`,{kind:"glb",gauge:c}))}
            ${h("Cavity, STL",ue(`${i} cavity.stl`,{kind:"stl",gauge:{file:l}}))}`:""}
    </div>
    <p role="status">
      ${o||`The drawing has the pour line ${A(X(a.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var Uu=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function zu(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(p=>!p.buried&&p.cavity_fills>0),r=i?qu(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,c=t.pipe?Tf(t,e,n,l):0;return{brim:n,line:o,topping:c,ball:r,proud:l,top:Math.max(n,(t.pipe?n:o)+c+l)}}function Tf(t,e,n,o){let i=nn(_(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(t.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,c]=Ji(e,e.brim-.01),p=Math.PI/4*(c-l)**2;return 1500*t.pipe.visible_each_ml/p}function Nu(t,e){let[n,o]=Ji(t,t.brim-.01),i=(n+o)/2,r=3,l=h=>(o-n)/2*Math.sqrt(1-(h/(r+.3))**2),c=h=>-(e.brim+e.topping*h/r),p=(h,$,x)=>{let P=i+x*(Math.max(l(h),l($))+(o-n)*.035);return`C${P} ${c(h)} ${P} ${c($)} ${i+x*l($)*($?.94:1)} ${c($)}`},m=`M${n} ${c(0)}`;for(let h=0;h<r;++h)m+=p(h,h+1,-1);m+=`L${i+l(r)*.94} ${c(r)}`;for(let h=r;h>0;--h)m+=p(h,h-1,1);return`${m}Z`}var Vn=(t,e)=>t===e?`shaded ${e}`:"plain";function Oe(t,e,n=u){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=zu(e,o),r=o.right-o.left,l=Math.max(6,r*.1),c={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
      <svg viewBox="${c.x} ${c.y} ${c.w} ${c.h}" role="img" aria-label=${Ef(t,e)}>
        ${Sf(t)} ${Rf(t,e,o,i)} ${Pf(t,e,o,i)} ${Df()}
        ${Ff(t,e,o,i)} ${Of(t,e,o,i)}
        ${E`<line class="pour-line" x1=${c.x+1} x2=${c.x+c.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${c.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${c.x+c.w-1} y1=${-i.brim} y2=${-i.brim} />`}
      </svg>
      ${n}
    </div>
    ${t==="decorate"&&Vr(e)?s`<p class="hint">${Vr(e)}</p>`:u}`}function Hu(t,e){let n=a.measured.outline,o=zu(t,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-e)/l,per_mm:1/l,w:i+2*r,h:l}}function Sf(t){return E`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${Uu(Ju())} /></clipPath>
  </defs>`}function Ju(){let t=a.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function Rf(t,e,n,o){let i=t==="cut"?"pour":t,r=e.pour.layers??[],l=(r.length?r.map(c=>Af(c,n)):[[o.line,o.line]]).map(([c,p])=>`M${n.left} 0V${-c}L${n.right} ${-p}V0Z`);return E`<g clip-path="url(#cavity-${t})">${l.map((c,p)=>E`<path class="whole" d=${c} /><path class="${Vn(i,"pour")} band${p%3}" d=${c} />${i==="pour"&&p%2===0?E`<path fill="url(#hatch-${t})" d=${c} />`:u}`).reverse()}</g>`}function Af(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function Pf(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String(_(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return E`<g clip-path="url(#cavity-${t})"><rect class=${Vn(t,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function Df(){return E`<path class="wall" fill-rule="evenodd" d=${Uu(Ju())} />`}function Ff(t,e,n,o){let i=(n.left+n.right)/2,r=e.pipe?o.brim:o.line,l=e.decorations?.flatMap((c,p)=>(c.buried?.embeds??[]).map(m=>({embed:m,one:c,i:p})))??[];return E`
    ${e.pipe?E`<path class=${Vn(t,"pipe")} d=${Nu(n,o)} />${t==="pipe"?E`<path fill="url(#dots-pipe)" d=${Nu(n,o)} />`:u}`:u}
    ${o.ball?E`<circle class=${Vn(t,"decorate")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:c,one:p,i:m})=>Mf(Vn(t,"decorate"),i,c,p,m))}`}function Mf(t,e,n,o,i){let[r,l]=[e+n.middle_mm[0],n.middle_mm[2]],c=nn(_(a.run.now,`/decorations/${i}/rod/diameter`)),p=nn(_(a.run.now,`/decorations/${i}/rod/length`));if(!c||!p)return E`<circle class=${t} cx=${r} cy=${-l} r=${qu(o)} />`;let[m,h]=[n.turn[0][0],n.turn[2][0]],$=Math.min(1,Math.hypot(m,h)),x=c/2*Math.sqrt(1-$*$),P=p*$+2*x,F=-180/Math.PI*Math.atan2(h,m);return E`<rect class=${t} x=${-P/2} y=${-c/2} width=${P} height=${c} rx=${x} ry=${x?c/2:0}
    transform="translate(${r} ${-l}) rotate(${F})" />`}var qu=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function Vr(t){let e=(t.decorations??[]).filter((n,o)=>_(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function Of(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return E`${Array.from({length:i-1},(r,l)=>{let c=n.left+(n.right-n.left)*(l+1)/i;return E`<line class="knife" x1=${c} x2=${c} y1=${-o.line} y2="0" />`})}`}function Ef(t,e){let n=A(X(a.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${Vr(e)}`.trim()}var Cf={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Dt={at:"/dust"},Gr=t=>j("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function Ku(){B(Dt,{name:""},"Dust")}function Lf(t){return g("run",`${t}/per_piece`)!==void 0?"piece":g("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function Vu(t){let e=`/dust/${t}`,n=Lf(e),o=Gr(t),i=r=>({...U("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...Cf[r]});return s` ${d({label:"Which powder",at:`${e}/name`})}
  ${b({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?d({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?s`<div class="row">
            ${d({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${d({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${d({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${se("run",e,o)}`}var Bf={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function If(t){return["on_top","buried"].find(e=>g("run",`${t}/${e}`)!==void 0)??"by number"}function Gu(t,e){let n=If(t),o=i=>({...U("run",t,["on_top","buried"]),...Bf[i]});return Vo(t)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:R({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>s` ${b({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?Wf(`${t}/on_top`):n==="buried"?Nf(t,e):s`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function Wf(t){return s`<div class="row">
      ${d({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${d({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${Qu(t,"It is turned")}`}function Qu(t,e){let n=o=>d({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return R({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var jf=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function Nf(t,e){let n=`${t}/buried`,o=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),i=g("run",`${n}/placed`);return s`${O("run",n)}
  ${d({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between it and wall, floor, pour line and the next one."})}
  ${b({question:"When is it set in?",at:`${n}/placed`,chosen:i,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:r=>r})}
  ${b({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:o,answers:jf,puts:r=>Uf(t,r)})}
  ${o==="said"?Hf(t,e):u}`}var Yu={x:"",y:"",height:""};function Uf(t,e){let n=U("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{...g("run",t),buried:{...n,arrange:e}};let o=Number(g("run",`${t}/${qn(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>Yu);return{...U("run",t,["per_piece","per_cast"]),[Zu(t)]:i.length,buried:{...n,places:i}}}var Zu=t=>rt()?"per_cast":qn(t)??"per_piece";function zf(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>W(r,`${t}/${l}`,void 0),n);return W(i,`${t}/${Zu(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function Hf(t,e){let n=zf(t),o=T(n);return s`<p class="hint">
      From the cavity's middle to its own: x to the right in the drawing, y away from you, either below zero for the
      other side. The height is that of its lowest point above the cavity's.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,c=p=>d({label:`Place ${r+1}: ${p}`,at:`${l}/${p}`,unit:"mm",short:!0});return s`<div class="part" id=${M(n,r)} role="group" aria-label="Place ${r+1} of ${Me(e)}">
        ${O("run",l)}
        <div class="row">
          ${c("x")} ${c("y")} ${c("height")} ${N(n,r,`place ${r+1} of ${Me(e)}`)}
        </div>
        ${Qu(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${I(n,"Add a place",()=>B(n,Yu,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var Xu=t=>`${t} made`;function Jf(){let t=Ko(T(yt).length),e=rt()?{}:{per_piece:""};for(let n of[Xu(t),`${t} where`])Yl("run",n);B(yt,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function Yo(){let[t,e]=[T(yt).length>0,T(Dt).length>0];return s`<div class="choice">
    ${I(yt,t?"Add another decoration":"Add a decoration",Jf)}
    ${I(Dt,e?"Add another dust":"Add a dust",Ku)}
  </div>`}function tc(t){let e=Ko(t);return s` ${O("run",e)} ${Gf(e)}
    <div class="row">
      ${qf(e)} ${d({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${d({label:"Lost in melting",at:`${e}/melt_loss`,unit:"%",short:!0})}
      ${d({label:"Left in the jug per tray fill",at:`${e}/left_in_jug`,unit:"g",short:!0})}
      ${d({label:"Density when set",at:`${e}/density`,unit:"g/ml",short:!0})}
    </div>
    ${Gu(e,t)} ${se("run",e,Me(t))}`}function qf(t){let e=qn(t),n=ee("run",`${t}/buried/places`).length;if(n&&n===g("run",`${t}/${e}`)&&!(rt()&&e==="per_piece"))return s``;let o=e==="per_cast"?rt()?"In each loaf":"In each cast":rt()?"On each bar":"On each piece",i=r=>({...U("run",t,["per_piece","per_cast"]),[r]:e?g("run",`${t}/${e}`):""});return s`${rt()?b({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?d({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var Kf={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function Vf(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle",...e==="drizzle"?["on_top","buried"]:[]];return{...U("run",t,n),...Kf[e]}}function Gf(t){let e=Vo(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","time_per_tray_fill"].map(o=>`${t}/${o}`);return R({name:Xu(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>s` <div class="row">
          ${d({label:"What it is called",at:`${t}/name`})}
          ${d({label:"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${b({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>Vf(t,o)})}
        ${e?Qf[e](t):u}
        ${d({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var Qf={mould:Yf,rod:t=>s`<div class="row">
      ${d({label:"Rod, across",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${d({label:"Rod, long",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>s`<div class="row">
      ${d({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${d({label:"Thick",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function Yf(t){let e=g("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return s`${qt("Cast in",`${t}/mould`,a.files?.moulds)}
  ${d({label:"Trays like this owned",at:Kn(t),count:!0,optional:!0,hint:"Else as many as the mould's own file says."})}
  ${b({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?d({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):d({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${b({question:"What makes one?",at:`${t}/cast_as`,chosen:g("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var hn=()=>T(yt).length+T(Dt).length>0;function ec(){return s`<section class="lane unused" aria-label="Decorate">
    <h2>Decorate</h2>
    <p>Nothing is set on or in it${Ur()?", and it is left whole":""}.</p>
    ${Yo()} ${zr()}
  </section>`}function nc(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function oc(t){let e=T(yt).flatMap((n,o)=>{let i=Zf(t,o);return i?[{one:i,i:o}]:[]});return s`<div class="side">${e.map(({one:n})=>Xf(t,n))} ${Oe("decorate",t)}</div>
    <div class="weights">
      ${e.map(({one:n,i:o})=>th(t,n,o))}
      ${t.dust?.length&&T(Dt).length?s`${G(t.whole)?le(t):u}
              <h3>Weigh for dusting</h3>`:u}
      ${T(Dt).map((n,o)=>nh(t,o))}
    </div>
    ${Qr()}`}var Zf=(t,e)=>nc(t.decorations,T(yt),j("run",`/decorations/${e}/name`),e);function Qr(){let t=(e,n,o,i)=>s`<section class="questions" id=${M(e,n)} aria-labelledby="${M(e,n)}-title">
      <div class="part-head">
        <h3 id="${M(e,n)}-title">${o}</h3>
        ${N(e,n,o)}
      </div>
      ${i}
    </section>`;return s`<div class="all-questions">
    ${T(yt).map((e,n)=>t(yt,n,Me(n),tc(n)))}
    ${T(Dt).map((e,n)=>t(Dt,n,Gr(n),Vu(n)))} ${Yo()} ${zr()}
  </div>`}function Xf(t,e){let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"";return s`<p class="order ${a.is_old?"old":""}">
    Cast <b>${e.casts}</b> of ${e.name} ahead${n}${G(t.whole)?", for the whole run":""}.
  </p>`}function th(t,e,n){return s`<h3>
      Weigh for ${e.name} ${G(t.whole)?s`<small>for the whole run</small>`:u}
    </h3>
    ${k({key:`decorations.${n}.make`,label:`Melt of ${e.material}`,shown:z(a.units,lt(e,"make_")),size:"weigh",of:`decorations.${n}.make_g`})}
    ${k({key:`decorations.${n}.each`,label:"Each weighs",note:`${v(e.volume_each_ml,2)} ml`,shown:D(a.units,e.mass_each_g,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?s`<p>${ne(e.casting_s)} of casting.</p>`:u} ${eh(e,n)}`}function eh(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=l=>l===null?"not known":A(X(a.units,l)),r=l=>{let c=(o?.embeds??[]).map(l).filter(p=>p!==null);return c.length?A(X(a.units,Math.min(...c))):"none near"};return s`<h4>Fit of ${t.name}</h4>
    <dl class="facts">
      ${n?s`<div>
                <dt>Contact circle</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Sticks out by</dt>
                <dd>${i(n.stands_proud_mm)}</dd>
              </div>`:u}
      ${o?s`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${r(l=>l.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${r(l=>l.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${r(l=>l.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${r(l=>l.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${v(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${Fe(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function nh(t,e){let n=nc(t.dust,T(Dt),j("run",`/dust/${e}/name`),e);if(!n)return u;let o=g("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,r=k({key:`dust.${e}`,label:n.name,shown:z(a.units,lt(n,"")),size:"weigh",of:`${t.place}.dust.${e}.g`});return s`${r}${i?s`<p class="alarm">
          Nothing of a topping or a decoration sees the air, so it comes to nothing: say what is weighed for one piece.
        </p>`:u}`}function ic(t){let{cut:e}=t;return s`<div class="side">
      ${e?s`<p class="order ${a.is_old?"old":""}">
              Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}.
            </p>`:u}
      ${Oe("cut",t)}
    </div>
    <div class="weights">
      ${e?s`${k({key:"cut.bar",label:"A bar on average, fresh",note:oh(e),shown:D(a.units,t.piece.fresh_g),size:"weigh",of:"cut.bars_each"})}
            ${k({key:"cut.offcuts",label:"Offcuts",shown:D(a.units,e.offcuts_g),of:"cut.offcuts_g"})}
            ${ih(e)}`:u}
    </div>
    <div class="all-questions">${Go()} ${hn()?u:Yo()}</div>`}function oh(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${v(n,1)} to ${v(o,1)} g`}function ih(t){return t.one_more?.length?s`<ul class="limits">
    ${t.one_more.map(e=>s`<li>At ${e.size_text} ${e.direction} it gives ${e.bars} bars.</li>`)}
  </ul>`:u}var pe="/pour/layers",ce={at:pe,in_order:!0},Yr=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Xo=()=>T(ce);function rh(){let t=e=>Xo().some(n=>e in n);return Yr.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function Zr(t){let e=Xo(),n=rh();return e.length?s`<h3>
      Layers, lowest first ${t&&pt(t)?s`<small>${pt(t)}</small>`:u}
    </h3>
    ${b({question:"All of them by",at:pe,is_told_elsewhere:!0,chosen:n,answers:Yr,puts:o=>ah(o,t)})}
    <div class="items">${e.map((o,i)=>lh(o,i,n,t))}</div>
    ${I(ce,"One more layer on top",()=>B(ce,{name:sh(e),[n]:""},"layer"))}`:s`<p class="choice">
      ${I(ce,"Pour it in layers",()=>B(ce,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function sh(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function rc(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function ah(t,e){let n=Xo(),o=a.is_old?void 0:e,i=(r,l)=>{let c=rc(o,r,l);return t==="parts"||!c||t==="depth"&&"tilted"in r?"":t==="depth"?`${v(c.to_mm-c.from_mm,3)} mm`:`${v(c.mass_each_g,3)} g`};return n.map((r,l)=>{let c=Zo(l),p=t!=="parts"&&n.length>1&&l===n.length-1;return{...c,...p?{rest:!0}:{[t]:i(r,l)}}})}var Zo=t=>U("run",`${pe}/${t}`,[...Yr.map(([e])=>e),"rest"]);function lh(t,e,n,o){let i=`${pe}/${e}`,r=String(t.name)||`Layer ${e+1}`,l=rc(o,t,e);return s`<div class="part" id=${M(ce,e)} role="group" aria-label="Layer ${r}">
    ${l&&o?uh(o,l,e):s`<p class="part-title">${r}</p>`} ${O("run",i)}
    ${ph(t,e,n,r)}
    ${o&&l?l.colours.map((c,p)=>ch(o,c,e,p)):u}
    ${R({name:i,pointers:["name","colours","tilted"].map(c=>`${i}/${c}`),summary:"Name, colours, prop",body:()=>s` ${d({label:"Name of the layer",at:`${i}/name`})} ${hh(i,r)} ${_h(i,e)}
        ${N(ce,e,r)}`})}
  </div>`}function uh(t,e,n){return k({key:`pour.layer.${n}`,label:e.name,note:`${_r(X(a.units,e.to_mm-e.from_mm))} thick, ${_r(D(a.units,e.mass_each_g))} each`,shown:e.g_text===void 0?D(a.units,e.g):z(a.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function ch(t,e,n,o){return k({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${v(e.teaspoons,1)} tsp`:"",shown:Jt(a.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function ph(t,e,n,o){if(n==="parts")return dh(t,e,o);let i="rest"in t;return s`${i?u:d({label:`${o}, ${n}`,at:`${pe}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?fh(e,n):mh(e,n)}
    >
      takes the rest
    </button>`}function dh(t,e,n){let o=`${pe}/${e}/parts`,i=r=>()=>{f({typed:void 0}),V("run",o,Math.max(1,(Number(t.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${d({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function mh(t,e){let n=Xo().map((o,i)=>i===t?{...Zo(i),rest:!0}:o.rest?{...Zo(i),[e]:""}:o);K("run","takes the rest",pe,n)}function fh(t,e){let n=`${pe}/${t}`;K("run","amount of the layer",n,{...Zo(t),[e]:""},re("run",`${n}/${e}`))}function hh(t,e){let n={at:`${t}/colours`,in_order:!0};return s`${T(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${M(n,i)} role="group" aria-label="${l} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${N(n,i,l)}
      </div>
      ${O("run",r)}
      <div class="row">
        ${d({label:"Colour",at:`${r}/name`})}
        ${d({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${d({label:"Weight of a loose ml",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"Bulk density; needed for spoons."})}
      </div>
      ${se("run",r,l)}
    </div>`})}
  ${I(n,"Add a colour",()=>B(n,{name:"",rate:""},"colour"))}`}var gh=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, behind it"],["-y","\u2212y, before it"]];function _h(t,e){let n=`${t}/tilted`,o=g("run",`${n}/low_side`);return e===T(ce).length-1&&g("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:mt({at:n,name:"the prop",title:"The mould is tilted",add:"Prop the mould up for this layer",blank:{angle:"",low_side:""},body:()=>s`${d({label:"Leans by",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${b({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o,answers:gh,puts:r=>r})}
        ${d({label:"Low side, or its direction",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var Kt=()=>_(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function Xr(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=Kt()==="depth"?n-o:o;f({typed:void 0}),V("run",`/pour/line/${Kt()}`,`${v(i,2)} mm`)}function sc(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=nn(_(a.run.now,`/pour/line/${Kt()}`));return n===void 0?t.pour.below_brim_mm:Kt()==="depth"?e-n:n}function $h(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=l=>e((l.clientY-t.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function bh(t){if(!a.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=sc(t),{share:o,h:i}=Hu(t,e-n),r=p=>$h(p,m=>Xr(t,n+m*i)),l=p=>{let m={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[p.key];m!==void 0&&(p.preventDefault(),Xr(t,n+m))},c=p=>p&&(p.style.top=`${100*o}%`);return queueMicrotask(()=>c(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${v(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${A(X(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function wh(t){let{pour:e}=t,n=A(X(a.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each";return s`<p class="order ${a.is_old?"old":""}">
    ${o}, <b>${A(D(a.units,e.mass_each_g))}</b> ${i}.
  </p>`}function ac(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>Xr(t,sc(t)+i);return s`<div class="side">
      ${wh(t)} ${Oe("pour",t,bh(t))} ${uc(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">+ 1 mm</button>
        ${d({label:Kt()==="depth"?"Deep":"Below brim",at:`/pour/line/${Kt()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">− 1 mm</button>
      </div>
      ${k({key:"pour.mm",label:"1 mm is",shown:Y(a.units,e.ml_per_mm,2),note:`${Ct(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${k({key:"pour.each",label:"Weigh into each",shown:D(a.units,e.mass_each_g),size:"weigh",note:`${v(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
    </div>
    <div class="weights">
      ${le(t)} ${ts("pour","Weigh for the base",e.formula)} ${es(e,n,"pour")}
      ${k({key:"pour.make",label:"Base to make",shown:D(a.units,e.make_g),size:"weigh",of:`${n}.make_g`})}
      ${k({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>
    <div class="more">${Zr(t)} ${Hn("pour")}</div>`}function lc(){let t=Kt();return s`<div class="side">
      ${uc()} ${O("run","/pour/line")}
      ${d({label:t==="depth"?"Deep":"Below brim",at:`/pour/line/${t}`,unit:"mm"})}
    </div>
    <div class="more">${Zr()} ${Hn("pour")}</div>`}function uc(t){let e=n=>{if(n===Kt())return;let o=t&&!a.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;K("run","pour line","/pour/line",{[n]:o===void 0?"":`${v(o,3)} mm`})};return nt("The pour line is measured",Kt(),[["below_brim","From the brim"],["depth","From the floor"]],e)}function yh(t){return t.teaspoons?`about ${v(t.teaspoons,1)} tsp`:""}function vh(t){let e=t.set_aside_for_colours_g?`${A(z(a.units,{g:t.set_aside_for_colours_g,scale_step_g:t.scale_step_g}))} of it for the colours`:"";return[yh(t),e].filter(Boolean).join(", ")}function ts(t,e,n){return s`<div class="weigh-head">
    <h3>${e} <small>${n}</small></h3>
    <button
      type="button"
      @click=${()=>tn(t)}
      aria-label="Change the formula ${t==="pour"?"of the base":"of the topping"}"
    >
      Change the formula
    </button>
  </div>`}function es(t,e,n){return s`${Eo(t).map(({one:o,i})=>ns(o,i,e,n))}`}function ns(t,e,n,o){return k({key:`${o}.${e}`,label:t.name,note:vh(t),shown:Jt(a.units,t),size:"weigh",of:`${n}.ingredients.${e}.g`})}var kh=[0,50,80,100];function cc(t){let{pipe:e}=t;return e?s`<div class="side">
      <p class="order ${a.is_old?"old":""}">
        Pipe <b>${v(e.volume_each_ml,0)} ml</b> on each, ${A(D(a.units,e.mass_each_g))} at this
        whip.
      </p>
      ${Oe("pipe",t)}
      ${k({key:"pipe.each",label:"Topping on each",shown:Y(a.units,e.volume_each_ml),note:`${v(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${Th(t)} ${mc()} ${Dh(t)}
    </div>
    <div class="weights">
      ${le(t)} ${ts("pipe","Weigh for the topping",e.formula)}
      ${t.whippings.map((n,o)=>xh(t,n,o))}
      ${k({key:"pipe.density",label:"Whipped density",note:`overrun ${v(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`})}
      ${Ir(e)}
    </div>
    <div class="more">${Br(e)} ${Lr()}</div>`:is()}var Gn=t=>t===0?"pipe":`pipe.whipping${t}`,Ee=(t,e)=>`${t.place}.pipe.whippings.${e}`;function os(t,e){let n=jn(t,e);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function xh(t,e,n){let o=Gn(n);return s`${os(t,e)} ${es(e,Ee(t,n),o)}
  ${k({key:`${o}.make`,label:"Topping to make",note:jn(t,e),shown:D(a.units,e.make_g),size:"weigh",of:`${Ee(t,n)}.make_g`})}`}function is(){return s`<div class="more">${Br()}</div>
    <div class="side">${mc()} ${g("run","/pipe/whip_now")===void 0?u:dc()}</div>
    <div class="weights">${Ir()} ${Du()}</div>
    <div class="more">${Lr()}</div>`}var pc=t=>pt(t)?s`<small>${pt(t)}</small>`:u;function Th(t){return s`<h3>This bowl, now ${pc(t)}</h3>
    ${dc()} ${t.whippings.map((e,n)=>Sh(t,e,n))}`}function Sh(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,r=i>0?`Short by ${i} at this whip.`:`Enough for the ${e.pieces} to make.`;return s`${os(t,e)}
  ${o==null?u:k({key:`${Gn(n)}.now`,label:"This bowl pipes now",note:r,shown:[it(o,"piece"),""],size:"weigh",of:`${Ee(t,n)}.pieces_now`})}
  ${Ah(t,e,n)}`}function dc(){let t={holds:g("run","/pipe/whip/holds")??"",net:""};return mt({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:t,body:Rh})}function Rh(){return s`<div class="row">
    ${d({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})}
    ${d({label:"Cup holds",at:"/pipe/whip_now/holds",unit:"ml",short:!0})}
  </div>`}function Ah(t,e,n){return e.readings?.length?s`<table class="readings">
      <caption>
        If the weigh-cup reads
      </caption>
      <thead>
        <tr>
          <th scope="col">net</th>
          <th scope="col">overrun</th>
          <th scope="col">pipes</th>
        </tr>
      </thead>
      <tbody>
        ${e.readings.map(o=>s`<tr class=${o.planned?"planned":""}>
              <th scope="row">${v(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${v(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${Fe(`${Gn(n)}.readings`,"Show the calculation",`${Ee(t,n)}.readings`)}`:u}function mc(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(j("run",t))?.[1]?.replace(",",".")),n=Lt("run",t);return s`<h3 id="recess">How much of the headspace below the brim does the topping fill?</h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${kh.map(o=>s`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>V("run",t,`${o} %`)}
          >
            ${Ph(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${d({label:"Or as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function Ph(t){let e=52*(t/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${E`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function Dh(t){let e=t.whippings.map(i=>({one:i,words:Fh(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:s`<h3>Limits of whisk, bowl and time ${pc(t)}</h3>
    ${e.map(({one:i,words:r})=>s`${os(t,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${Fe("pipe.limits","How the limits come about",`${Ee(t,0)}.limits`)}`}function Fh({piping_s:t,lye_spoonfuls:e}){return[t?`${ne(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${ne(e.altogether_s)}`:""].filter(Boolean).join("; ")}function hc(t){if(!Ao(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=G(e)?`${it(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${fc(t,"pour","The base, whole run")}
      ${e.pipe?fc(t,"pipe","The topping, whole run"):u} ${Mh(t)}
    </div>
  </section>`}function fc(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,r=[...Eo(i),...rn(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:c})=>ti(`${e}.ingredients.${c}.g`,l.name,Jt(a.units,l)))}
    ${ti(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",D(a.units,i.make_g))}
  </div>`}var ti=(t,e,n)=>k({key:`needs.${t}`,label:e,shown:n,of:t});function Mh(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((r,l)=>r.colours.map((c,p)=>({layer:r,one:c,i:l,j:p}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=r=>z(a.units,lt(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:c,j:p})=>ti(`pour.layers.${c}.colours.${p}.g`,`${l.name}, for ${r.name}`,Jt(a.units,l)))}
    ${o.map((r,l)=>ti(`dust.${l}.g`,r.name,i(r)))}
  </div>`}function _c(t){return s`<section class="shelf" aria-labelledby="shelf-title">
    <h2 id="shelf-title">Lye</h2>
    ${le(t)}
    <div class="jugs">
      ${gc({slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:t.batch.pieces,key:"pour"})}
      ${t.whippings.map((e,n)=>{let o=jn(t,e);return gc({slot:"pipe",title:`Lye for the topping${o&&`, ${o}`}`,batter:e,place:Ee(t,n),pieces:t.batch.pieces,key:Gn(n)})})}
    </div>
    ${Eh(t)} ${Jr()} ${qr(t)}
  </section>`}function gc({slot:t,title:e,batter:n,place:o,pieces:i,key:r}){let{effective:l}=n.superfat_percent,c=Ae(t,i).length>0,p=`danger-${r.replaceAll(".","-")}`,m=r===t;return s`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${rn(n).map(({one:h,i:$})=>ns(h,$,o,r))}
    ${k({key:`${r}.strength`,label:"Lye strength",note:`water ${v(n.water_to_pure_alkali,2)} : 1 to alkali; water ${v(n.water_percent_of_fats,1)} % of the fats`,shown:[`${v(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${k({key:`${r}.superfat`,label:"Superfat as weighed",shown:[`${Ht(l)}${c?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`})}
    ${Bn(t,p,i)} ${$c(n.superfat_percent)} ${Oh(n,o,r)}
    ${!m||g(t,"/superfat")===void 0?u:d({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:c?p:void 0,hint:a.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function $c(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:r}=t,l=`It lies between ${Ht(e)} and ${Ht(n)}, as lots, purity and scales may fall`,c=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${Ht(o)} and ${Ht(i)}.`,p=r[0],m=p?s` Most of the doubt is ${p.cause}: ${p.remedy}.`:u;return gr(e)?s`<p class="mind of-plan">
    <strong>Mind</strong> It may come out lye-heavy. ${l}${c}
    ${p?m:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:s`<p class="aside of-plan">${l}${c} Some fat is left over even at the lowest.${m}</p>`}function Oh(t,e,n){return t.heat?s`${bc(t.heat)} ${Fe(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function bc(t){let e=o=>A(Nl(a.units,o)),n=t.cooling.map(o=>`${o.shortest_min*60?ne(o.shortest_min*60):"at once"} to ${ne(o.longest_min*60)} in ${o.in}`);return s`<p class="aside of-plan">
    Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at
    ${e(t.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function Eh(t){let e=t.lye_pot;if(!e)return u;let{units:n}=a,o=(i,r,l,c,p="")=>k({key:`pot.${i}`,label:r,note:p,shown:l,size:"weigh",of:`${t.place}.lye_pot.${c}`});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${v(e.strength_percent,1)} %${pt(t)&&`; ${pt(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",z(n,lt(e,"water_")),"water_g")}
    ${e.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,z(n,lt(i,""),"down"),`alkalis.${r}.g`))}
    ${o("lye","Lye solution in the pot",z(n,lt(e,"lye_")),"lye_g",Ch(e))}
    ${e.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,z(n,lt(i,"lye_"),"down"),`shares.${r}.lye_g`,`superfat then ${Ht(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,z(n,lt(i,"top_up_")),`shares.${r}.top_up_g`):u}
        ${Bn(r===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?$c(i.superfat):u}`)}
    ${e.left_g?s`<p class="aside of-plan">
            ${A(z(a.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?bc(e.heat):u}
  </div>`}function Ch(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=lt(t,"lye_"),i=z(a.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${A(i)} with the pot: make up with water to that after cooling`}var Lh={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Mind",note:"Note"};function wc(t){let e=r=>r.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(r=>!e(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${Lh[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function yc(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=t.piece,c=r?"A bar on average, ":"",p=m=>c?c+m.toLowerCase():m;return s`<section class="piece" aria-labelledby="piece-title">
    <h2 id="piece-title">The piece</h2>
    ${k({key:"piece.fresh",label:p("Fresh"),shown:D(a.units,n),of:"piece.fresh_g"})}
    ${o===null?u:k({key:"piece.cured",label:p("Cured"),shown:D(a.units,o),of:"piece.cured_g"})}
    ${r?k({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:D(a.units,r.cured_g??r.fresh_g),of:r.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
    ${i===null?u:k({key:"piece.label",label:"Net weight for the label",shown:D(a.units,i,0),of:"piece.label_g"})}
    ${l?k({key:"piece.size",label:"Over all",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(m=>v(m,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
    ${e&&e.amount!==null?s`${k({key:"piece.cost",label:"Materials for one",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
          ${e.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
    ${Ih(t)} ${Bh(t)} ${Kr()}
  </section>`}function Bh(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:u;return s`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}function Ih(t){let e=t.piece.cost?.materials.map(o=>o.name)??[];if(!e.length)return u;let n=o=>`/money/prices/${o.replaceAll("~","~0").replaceAll("/","~1")}`;return R({name:"prices",pointers:["/money/prices"],summary:"Prices paid",body:()=>s` ${e.map(o=>s`<div class="row">
            ${d({label:`${o}, paid`,at:`${n(o)}/paid`,optional:!0,short:!0})}
            ${d({label:`for (pack of ${o})`,at:`${n(o)}/for`,unit:"g",optional:!0,short:!0})}
          </div>`)}`})}function vc(t){let e=pt(t);return s`<section class="losses" aria-labelledby="losses-title">
    <h2 id="losses-title">Losses and scales</h2>
    <p class="aside">
      ${e?`Of ${e}: in`:"In"} the pieces ${A(D(a.units,t.pour.in_pieces_g))} of base, lost
      ${A(D(a.units,t.pour.lost_g))}${t.pipe?`; of topping ${A(D(a.units,t.pipe.in_pieces_g))}, lost ${A(D(a.units,t.pipe.lost_g))}`:""}.
    </p>
    <div class="row">
      ${zn("pour",t.pipe&&"Base")} ${t.pipe?zn("pipe","Topping"):u}
    </div>
    <div class="row">
      ${d({label:"Large scale, smallest step",at:"/scales/large/step",unit:"g",short:!0})}
      ${d({label:"Large scale, most it weighs",at:"/scales/large/most",unit:"g",short:!0})}
      ${d({label:"Fine scale, smallest step",at:"/scales/fine/step",unit:"g",short:!0})}
      ${d({label:"Fine scale, most it weighs",at:"/scales/fine/most",unit:"g",short:!0})}
    </div>
  </section>`}function kc(t){let e=n=>()=>{f({units:n}),localStorage.setItem("units",n)};return s`<header>
    <p class="mark" aria-hidden="true">▽ Brimwright</p>
    ${a.view==="run"||a.view==="formula"?s`<div class="tools" role="group" aria-label="Tools">
              <button type="button" @click=${t}>Runs and moulds</button>
              <button type="button" ?disabled=${!a.past.length} @click=${He}>Undo</button>
              <button type="button" ?disabled=${!a.future.length} @click=${bo}>Redo</button>
            </div>
            <div class="tools" role="group" aria-label="Units">
              ${["metric","both","us"].map(n=>s`<button
                    type="button"
                    aria-pressed=${a.units===n?"true":"false"}
                    @click=${e(n)}
                  >
                    ${{metric:"g, mm",both:"both",us:"oz, in"}[n]}
                  </button>`)}
            </div>
            <p class="saving" role="status">${Wh()}</p>`:u}
  </header>`}function Wh(){let t=jh();if(t)return t;let{run:e}=a,n=a.formula_of==="apart"||!(H(e)||e.theirs||e.failed);return a.view==="formula"&&n?Nh():e.theirs?"Not saved: say which is to stay.":e.failed?`Not saved: ${e.failed}`:H(e)?"Saving ...":e.shipped?"An example: your first change is saved as a copy.":`Saved in ${e.file}`}function jh(){let t=a.formulas.apart?"apart":"run",e=zt(t);return e?`Not saved: ${e.file} was changed outside this page; say which is to stay.`:(t==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&H(o))?a.complaint&&a.complaint.file===""?`Not saved: ${a.complaint.problem}`:"Saving ...":""}function Nh(){let t=a.formulas[a.formula_of];return t?t.shipped?"Came with the program: your first change is saved as a copy.":`Saved in ${t.file}`:""}function xc(){let{plan:t}=a,e=t&&Ro(t);return s`
    ${yo().map(n=>sn(n))} ${rs()}
    ${t?Kh(t):s`<h1>${String(a.run.now.name??"")}</h1>`}
    ${t&&e?s`${Vh(e)} ${_c(e)}
            <div class="beside">${wc(t)} ${yc(t)}</div>
            ${hc(e)} ${vc(e)} ${Yh(t)} ${ju(t)} ${Uh(e)}`:s`<p class="hint">${a.complaint?"Correct this to see the figures.":"Reading the run ..."}</p>
            ${zh()}`}
  `}function Uh(t){let e=i=>()=>{let r=document.getElementById(i);r.tabIndex=-1,r.focus({preventScroll:!0}),r.scrollIntoView({block:"start"})},n=[["run-title","Top"],["lane-pour","Pour"],["lane-pipe","Pipe"],["lane-decorate","Decorate"],["lane-cut","Cut"],["shelf-title","Lye"],...lr()?[]:[["watch-title","Cautions"]],["piece-title","Piece"],["needs-title","Needs"],["mould-title","Mould"],["out-title","Print"]],o={"lane-pipe":wt(),"lane-cut":rt(),"lane-decorate":hn(),"needs-title":Ao(t)};return s`<nav class="parts" aria-label="Parts of this run">
    ${lr()?s`<button type="button" class="danger" @click=${e("watch-title")}>
            <span aria-hidden="true">⚠</span> Danger
          </button>`:u}${n.filter(([i])=>o[i]??!0).map(([i,r])=>s`<button type="button" @click=${e(i)}>${r}</button>`)}
  </nav>`}function zh(){return s`<div class="row">
      ${d({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
      ${d({label:"Spoilage",at:"/spoilage",unit:"%",short:!0})}
    </div>
    ${Nr()} ${a.complaint?Hh():u}`}function Hh(){let t=wt();return s`<div class="row">
      ${qt("Mould","/pour/mould",a.files?.moulds)}
      ${qt("Base","/pour/formula",a.files?.formulas)}
      ${t?qt("Topping","/pipe/formula",a.files?.formulas):u}
    </div>
    <div class="lanes">
      ${de("pour","Pour",lc())} ${t?de("pipe","Pipe",is()):u}
      ${hn()?de("decorate","Decorate",Qr()):u}
      ${rt()?de("cut","Cut",Go()):u}
    </div>
    ${Cu()}`}function rs(){let t=a.complaint;return s`<div class="complaints" role="status">
    ${t?s`<p class="alarm">
              <strong>${a.plan?"The figures below are out of date.":"No figures yet."}</strong>
              ${t.field?s`<code>${t.field}</code>: `:u}${ut(t)}
            </p>
            ${t.is_fault?s`<button type="button" @click=${ss}>Ask again</button>`:u}
            ${an("run")?Qo(a.run.now,t.keep,(e,n)=>V("run",e,n)):u}
            ${oe()&&document.activeElement!==oe()||Tc()?s`<button type="button" @click=${qh}>Go to the field</button>`:u}`:u}
  </div>`}function ss(){Q(),a.run.failed&&Tt()}var Tc=()=>["pour","pipe"].find(t=>a.complaint?.file&&a.complaint.field&&an(t));function Jh(t){tn(t),requestAnimationFrame(()=>requestAnimationFrame(()=>oe()?.focus()))}function qh(){let t=oe(),e=Tc();t?yr(t):e&&Jh(e)}function Kh(t){let{sell:e,make:n,fillings:o,cavities:i,casts:r,batches:l}=t.pieces,c=G(t)?`${l} batches, ${it(o,"filling")}`:Po(o,i);return s`<section class="order-of" aria-labelledby="run-title">
    <div>
      <h1 id="run-title">${t.run}</h1>
      ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:u}
      ${t.from_studio?s`<p class="aside">From the studio: ${t.from_studio.text}.</p>`:u}
    </div>
    <div class="row">
      ${d({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
      ${d({label:"Spoilage",at:"/spoilage",unit:"%",short:!0})}
      ${qt("Mould","/pour/mould",a.files?.moulds)}
      ${qt("Base","/pour/formula",a.files?.formulas)}
      ${wt()?qt("Topping","/pipe/formula",a.files?.formulas):u}
      ${k({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} casts, ${c}`:c,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}
    </div>
    <div class="batches">${Lu(t)} ${Nr()}</div>
    <p class="aside">Tap a figure marked = to see how it is calculated.</p>
  </section>`}function Vh(t){let e=wt();return s`<div class="lanes">
    ${de("pour","Pour",ac(t))} ${e?de("pipe","Pipe",cc(t)):u}
    ${hn()?de("decorate","Decorate",oc(t)):u}
    ${rt()?de("cut","Cut",ic(t)):u}
    ${e?u:Gh("Pipe","This run has no topping.","Add a topping",Au,Pu())}
    ${hn()||rt()?u:ec()}
  </div>`}function de(t,e,n){let o=a.folded.has(t);return s`<section class="lane ${t}" aria-labelledby="lane-${t}">
    <div class="lane-head">
      <h2 id="lane-${t}" tabindex="-1">${e}</h2>
      <button
        type="button"
        aria-expanded=${o?"false":"true"}
        aria-label="${o?"Unfold":"Fold"} ${e}"
        @click=${()=>Ue("folded",t)}
      >
        ${o?"Unfold":"Fold"}
      </button>
    </div>
    ${o?u:s`<div class="lane-body">${n}</div>`}
  </section>`}function Gh(t,e,n,o,i=u){return s`<section class="lane unused" aria-label=${t}>
    <h2>${t}</h2>
    <p>${e}</p>
    <button type="button" @click=${o}>${n}</button>${i}
  </section>`}function Qh(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}function Yh(t){let{measured:e}=a;if(!e)return u;let n=e.gauge.pockets[0],o=e.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${k({key:"mould.brimful",label:"To the brim",note:`${A(X(a.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:Y(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the broken line is the pour line</figcaption>
        ${Ou(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${Qh(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}var Sc=()=>yo().map(t=>sn(t));function Rc(){let t=a.formula_of,e=a.formulas[t];if(!e)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Sc()}${rs()}
      <p>Reading the formula ...</p>
      ${ls(t)}`;let n=a.plan&&Ro(a.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return s`${Sc()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${Zh(t)}</p>
    <div class="choice">${ls(t)}${t==="apart"?Xh():u}</div>
    ${tg(t,o,n)} ${rg(t)} ${cu(t)} ${fu(t,o)} ${gu(t)}
    ${Zl(t)}
    <div class="choice">${ls(t)}</div>`}var as=()=>String(a.run.now.name??a.run.file);function Zh(t){let e=a.formulas[t],n=e.shipped?" It came with the program: your first change makes a copy of it beside your runs.":"",o=a.formulas.pour===e&&a.formulas.pipe===e;return t==="apart"?`It lies open by itself; its figures are those of a base for "${as()}".${n}`:o?`Base and topping of "${as()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${as()}".${n}`}function ls(t){return s`<button type="button" class="strong" @click=${()=>{In()}}>
    ${t==="apart"?"Close the formula":"Back to the run"}
  </button>`}function Xh(){return s`<button type="button" @click=${()=>{dr("pour")}}>Use it as the base</button> ${wt()?s`<button type="button" @click=${()=>{dr("pipe")}}>Use it as the topping</button>`:u}`}function tg(t,e,n){return s`<section class="strip" aria-label="What comes of it">
    ${e&&n?s`<dl>
            ${[...eg(t,n),...ng(t,e)].map(([o,i])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${og(t)}
  </section>`}function eg(t,e){let n=t==="pipe"?hr(e,e.whippings[0]):"";return n?[["For one whipping",n]]:G(e.whole)?[["For one batch",Rt(e.whole,e.batch)]]:[]}function ng(t,e){let n=Ae(t).length?" \u26A0":"";return[["Fats",A(D(a.units,e.fats_g))],["Superfat comes out at",`${Ht(e.superfat_percent.effective)}${n}`],...rn(e).map(({one:o})=>[o.name,A(Jt(a.units,o))])]}function og(t){let e=a.complaint;if(!e)return s`<div role="status"></div>`;let n=an(t),o=n&&e.field!==""&&document.activeElement!==oe();return s`<div role="status" class="asks">
    <p class="alarm">
      <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
      ${n?"":"Not about this formula: "}${ig(e.field)}${ut(e)}
    </p>
    ${e.is_fault?s`<button type="button" @click=${ss}>Ask again</button>`:u}
    ${o?s`<button type="button" @click=${()=>oe()?.focus()}>Go to the field</button>`:u}
  </div>`}function ig(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function rg(t){return s`<section class="card" aria-label="Name">
    ${d({label:"Name",of:t,at:"/name",wide:!0})}
    ${R({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>d({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}var us=t=>y(a.new_formula,t);function Ac(t){let{name:e,copied:n}=a.new_formula,o=[...a.files?.formulas??[]].sort((r,l)=>Number(r.shipped)-Number(l.shipped)),i=r=>()=>t(async()=>{await r(e.trim()),us({name:"",copied:""})});return s`<section aria-labelledby="formulas-title">
    <h2 id="formulas-title">Formulas</h2>
    <ul class="cards">
      ${o.map(r=>s`<li>
            <button type="button" @click=${()=>t(()=>pr(r.file))}>
              <b>${r.name||r.file}</b><span>${r.shipped?"built-in":r.file}</span>
            </button>
          </li>`)}
    </ul>
    <h3>A new formula</h3>
    <div class="row">
      <div class="field">
        <label for="new-formula">What you call it</label>
        <input
          id="new-formula"
          .value=${tt(e)}
          @input=${r=>us({name:r.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" ?disabled=${!e.trim()} @click=${i(Dl)}>Begin from blank</button>
    </div>
    <div class="row">
      <div class="field choose">
        <label for="copied-formula">Or as a copy of</label>
        <select
          id="copied-formula"
          @change=${r=>us({copied:r.target.value})}
        >
          <option value="" .selected=${tt(n==="")}>choose ...</option>
          ${o.map(r=>s`<option value=${r.file} .selected=${tt(r.file===n)}>${r.name||r.file}</option>`)}
        </select>
      </div>
      <button
        type="button"
        ?disabled=${!e.trim()||!n}
        @click=${i(r=>Fl(n,r))}
      >
        Make the copy
      </button>
    </div>
    ${e.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
  </section>`}var Pc=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function sg({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,h])=>h),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-t.brim-2*n+i,c=l-r-n,p=[t.left-n,c,t.right-t.left+2*n,-t.floor+n-c],m=(h,$)=>E`<path class="shaded pour" fill-rule="evenodd" d=${$} /><path class="wall ${h}" fill-rule="evenodd" d=${$} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${p.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${m("above",Pc(e,l))}${m("side",Pc(t.loops))}
    </svg>
  </div>`}function gn(t,e=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,r=i.pockets[0];return s`${sg(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${A(Y(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${A(Y(a.units,i.total_ml))} together`:u},
      ${A(X(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${A(Y(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:u}`}var ag={mm:"in",g:"oz","\xB0C":"\xB0F"},lg={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function ei(t,e,n=""){let o=cs(t);if(o)return o.unit??"";let i=on(_(S(),t));return lg[e]?.test(i)?i:n||(a.units==="us"?ag[e]??e:e)}var ni=()=>f({typed:void 0}),_n=t=>`d${t.replaceAll("/","-")}`,cs=t=>a.typed?.key===_n(t)?a.typed:void 0,oi=t=>cs(t)?.text??String(_(S(),t)??"");function me(t){let{complaint:e}=L();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function ps(t,e,n,o){let{pointer:i}=t,r=l=>{let c=l.target.value,p=t.unit?ei(i,t.unit,t.unit_before):"";f({typed:{key:_n(i),text:c,unit:p}}),J(i,ug(t,c,p))};return s`<input
    id=${_n(i)}
    .value=${tt(oi(i))}
    @input=${r}
    @blur=${ni}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${me(i)?"true":"false"}
  />`}function ug(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&Oo(e)?`${e.trim()} ${n}`:e}function ht(t,e){let n=_n(t.pointer),o=me(t.pointer),i=cg(t.pointer)??t.hint,r=t.unit?` (${ei(t.pointer,t.unit,t.unit_before)})`:"";return s`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${r}</label> ${ps(t,o||i?`${n}-said`:void 0,e)}
    ${dt(n,o,i)}
  </div>`}function cg(t){let e=_(S(),t),n=cs(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function ii(t){let e=t.toLowerCase(),{file:n,shipped:o}=L().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===e)?.file}async function Qn(t){let{open:e}=L();try{if(await Pn(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await Be()})}catch(n){if(!(n instanceof w))throw n;return Zi(n)}a.run.file&&(Et(),Q()),t(e.file)}var Vt="/shape/points",Dc=500,fe=(t,e)=>[Vt,t,...e?[e]:[]].join("/"),Fc=t=>Array.from({length:t.least},()=>({}));function Mc(t){let e=ct(S(),Vt),n=dg(),{complaint:o}=L(),i=o?.field===Vt&&!o.about?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(r=>s`<span
              >${r.label} (${ei(fe(-1,r.name),r.unit,Oc(t,e.length,r.name))})</span
            >`)}
      </div>
      ${e.map((r,l)=>pg(t,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=Dc} @click=${()=>si(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function pg(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=mg(e),r=l=>{let{name:c,label:p,unit:m}=t.columns[l],h={label:p,pointer:fe(e,c),unit:m,unit_before:Oc(t,e,c)},$=`${p}, ${n.has(e)?o:`point ${e+1}`}`;return ps(h,i?`point-${e}-said`:void 0,fg(t,e,l),$)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>si(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>Ec(t,e)}>×</button>
    ${i?s`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function dg(){let t=[...Sn(S()),...po(S())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function mg(t){let{complaint:e}=L();return me(fe(t))??(e?.about===fe(t)?e.line:void 0)}function Oc(t,e,n){let o=(i,r)=>on(_(S(),fe(i,r)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function ri(t,e){queueMicrotask(()=>document.getElementById(_n(fe(t,e)))?.focus())}function si(t,e){let n=[...ct(S(),Vt)];n.length>=Dc||(n.splice(e,0,{}),ni(),J(Vt,n),ri(e,t.columns[0].name))}function Ec(t,e,n=0){let o=ct(S(),Vt).filter((i,r)=>r!==e);ni(),J(Vt,o.length?o:[{}]),ri(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function fg(t,e,n){let[o,i]=t.columns.map(({name:r})=>r);return r=>{let l=!oi(fe(e,o))&&!oi(fe(e,i));if(r.key==="Enter"&&r.shiftKey)si(t,e+1);else if(r.key==="Enter"&&n===0)ri(e,i);else if(r.key==="Enter"&&e+1<ct(S(),Vt).length)ri(e+1,o);else if(r.key==="Enter")si(t,e+1);else if(r.key==="Backspace"&&l&&ct(S(),Vt).length>1)Ec(t,e,e>0?1:0);else return;r.preventDefault()}}var ds={weighings:[""]},ms=/\.(3mf|gltf|glb)$/i;function ai(t){let e=Zt(t);return e?{kind:t,points:Fc(e)}:{kind:t}}var hg=()=>J("/water",ds),Bt=t=>xt(S(),t),Yn=()=>Tn(S());function Cc(t){let{open:e,answer:n,is_old:o}=L();return s`${sn(e,()=>{Qn(t)})} ${Hl(e)}
    ${Bt("shape")&&Bt("mesh")?s`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${Bt("shape")?nt("Shape",Yn(),Object.entries(ha),gg):u}
    <div class="beside ${Zt(Yn())?"rows":""}">
      <div>
        ${fs()} ${Bt("shape")?$g():u} ${Bt("mesh")?bg():u}
        ${hs()} ${Bt("water")?yg():u} ${kg()}
      </div>
      <div class="stays">${gn(n,o,Bc())} ${xg(t)}</div>
    </div>`}function gg(t){let e={...L().shapes,[Yn()]:S().shape};y(L(),{shapes:e,answer:void 0}),J("/shape",e[t]??ai(t))}function _g(){let{shipped:t,file:e}=L().open;return t?a.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function fs(){let t=_g();return ht({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function $g(){let t=Yn(),e=Zt(t);return s`${Ne(t).length?s`<div class="row">
          ${Ne(t).map(n=>ht({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?Mc(e):u}`}function hs(t=Fi(S())){return s`<div class="row">
      ${t?u:ht({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${ht({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${ht({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${ht({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var gs=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],_s=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function bg(){let t=o=>String(_(S(),`/mesh/${o}`)??""),e=(o,i,r)=>{let l=me(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${nt(o,t(i),r,c=>J(`/mesh/${i}`,c||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:u}`},n=me("/mesh/file");return s`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:u}
    ${ms.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",gs)} ${e("Which way is up","up",_s)}
    ${t("role")==="body"?wg():u}
    <div class="row">
      ${ht({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${ht({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function wg(){let t=_(S(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${nt("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>J("/mesh/on_board",e==="yes"?!0:void 0))}`}function yg(){let t=_(S(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":_(t,"/depth")!==void 0?"depth":"below_brim",n=r=>J("/water/filled_to",r==="brim"?"brim":{[r]:""}),o=_(S(),"/water/weighed_in"),i=e===void 0||e==="brim"?me("/water/filled_to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${ht({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${nt("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?ht({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?ht({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${nt("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>J("/water/weighed_in",r))}
    <div class="row">
      ${ct(S(),"/water/weighings").map((r,l)=>ht({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},vg(l)))}
    </div>
    ${L().complaint?.field==="/water/weighings"?s`<p class="complaint">${L().complaint.line}</p>`:u}
    <button type="button" @click=${Lc}>One more round</button>`}function Lc(){let t=ct(S(),"/water/weighings").length;J(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var vg=t=>e=>{e.key==="Enter"&&(t+1===ct(S(),"/water/weighings").length?Lc():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function kg(){let t=(e,n)=>s`<button type="button" @click=${n}>${e}</button>`;return s`<div class="choice">
    ${Bt("shape")?u:t("Add measures, as a check",()=>J("/shape",ai("block")))}
    ${Bt("shape")&&Bt("mesh")?t("Leave the measures out",()=>J("/shape",void 0)):u}
    ${Bt("water")?t("Leave the water out",()=>J("/water",void 0)):t("Add weighed water",hg)}
  </div>`}function Bc(){let t=po(S()).length;return t?[...Rn(S()),t===1?"the other number of a point":`the other numbers of ${t} points`]:Rn(S())}function xg(t){let e=String(S().name??"").trim(),n=ii(e),{open:o,answer:i,is_old:r,complaint:l}=L(),c=i&&!r&&!l&&!Bc().length&&e&&!n,p=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!c} @click=${()=>{Qn(t)}}>
      ${p?"Save the change":"Use this mould"}
    </button>
    ${p?s`<p class="aside">It stays in ${p}.</p>`:u}
    ${e?u:s`<p class="hint">Give it a name first.</p>`} ${$s(e,n)}
    ${l?s`<p class="alarm" role="status">${Tg(l.field)}${l.line}</p>
            ${Qo(S(),l.keep,J)}`:u}`}var $s=(t,e)=>e?s`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function Tg(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=Ne(Yn()).find(({name:r})=>t===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var Sg=200*2**20;async function Ic(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:e}),J("/name",t.name.replace(/\.\w+$/,"")),t.size>Sg){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return y(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await pa(t,o=>y(e,{share:o}));y(e,{share:1,upload:n.file}),await jc(e)}catch(n){y(e,{complaint:n instanceof w?n.message:String(n)})}}async function jc(t){let e=t.questions+1;y(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:r}=t;try{let l=await qe({file:n,unit:o,role:i,up:r});e===t.questions&&y(t,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof w))throw l;if(e!==t.questions)return;let c=o?t.sizes:Dg(l.complaint),p=c.length&&!o?void 0:ut(l.complaint);y(t,{sizes:c,complaint:p,is_measuring:!1})}}async function Rg(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let r=await sa({file:n,unit:o,up:i});e===t.questions&&y(t,{inspection:r})}catch(r){if(!(r instanceof w))throw r;e===t.questions&&y(t,{complaint:ut(r.complaint)})}}function Ag(t){return t.inspection?s`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?s`<ul>
            ${t.inspection.defects.map(Pg)}
          </ul>`:s`<p>None.</p>`}`:s`<button type="button" @click=${()=>{Rg(t)}}>List every defect of the mesh</button>`}var Pg=({text:t})=>s`<li>${t}</li>`;function Dg({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>v(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function bs(t,e){y(t,e),jc(t)}function Nc(t,e){let n=l=>{let c=l.target;Ic(c.files?.[0]),c.value=""},o=l=>{l.preventDefault(),Ic(l.dataTransfer?.files[0])},[i,r]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return s` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${r} @change=${n} />
    </div>
    ${a.mesh?Fg(a.mesh,t,e):u}`}function Fg(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?s`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?s`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!ms.test(t.name)?s`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${nt("Unit of the file's numbers",t.unit,i,r=>bs(t,{unit:r}))}`:u}
    ${t.complaint?s`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?Ag(t):u}
    ${t.upload&&(t.unit||t.answer)?s`<h4>What it shows</h4>
            ${nt("Role",t.role??t.answer?.gauge.role,gs,r=>bs(t,{role:r}))}
            <h4>Which way is up</h4>
            ${nt("Up",t.up??"",_s,r=>bs(t,{up:r||void 0}))}`:u}
    ${t.answer?s`${gn(t.answer)} ${Mg(t,e,n)}`:u}`}var Uc=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function Mg(t,e,n){let o=String(S().name??"").trim(),i=ii(o),r=o&&!i&&!t.is_keeping;return s`${fs()} ${hs(Uc(t))} ${$s(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>Wc(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>Wc(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?s`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function Wc(t,e,n){y(t,{is_keeping:!0});try{let o=Og(t,await da(t.upload,Cg(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await Eg(o))return e(o);Ke(o,"mesh",L().title),await Qn(n),y(t,{complaint:a.mould?.complaint?.line})}catch(o){y(t,{complaint:o instanceof w?o.message:String(o)})}y(t,{is_keeping:!1})}function Og(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=S();return{...i,...Uc(t)||o===void 0?{}:{cavities:o},mesh:n}}async function Eg(t){try{return await Gt({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof w&&e.status===422)return!1;throw e}}var Cg=t=>je(t.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var li={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},zc={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function Hc(t){Se();let e={...zc,shape:ai("block")};t==="mesh"?Ke(zc,"mesh",li[t]):Ke(t==="water"?{...e,water:ds}:e,"form",li[t]),ui()}async function Jc(t,e){Se(),await Ua(t,e),ui()}async function qc(t){Se(),await za(t),ui()}function Lg(t){Ke(t,"form","More about this mould"),ui()}function ui(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function Kc(t){if(!a.mould)return;let{way:e,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?Nc(t,Lg):Cc(t)}
  </section>`}var ws=()=>f({chosen_mould:void 0});function ci(t,e){let n=a.files?.moulds.find(r=>r.file===t),o=a.catalogue.find(r=>r.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,owned:1,told:e};f({chosen_mould:i}),Bg(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function Bg(t){try{let[e,n]=await Promise.all([qe({file:t.file}),$t(t.file)]);y(t,{answer:e,owned:t.shipped?1:Number(Z(n.text)?.owned??1)})}catch(e){y(t,{complaint:e instanceof w?e.message:String(e)})}}function Vc(t,e){let n=()=>e(async()=>{await Jc(t.file,t.shipped),ws()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"of the catalogue":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?s`<p role="status">${t.told}</p>`:u} ${t.note?s`<p>${t.note}</p>`:u}
    ${t.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?gn(t.answer):t.complaint?u:s`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:Ig(t,e)}
    </div>
  </section>`}function Ig(t,e){let n=o=>()=>e(()=>Sl({mould:t.file,name:t.name,formula:o,...Wg(t.answer,t.owned)}));return s`<div>
    <h3>Make a run with it: which base?</h3>
    <ul class="cards">
      ${(a.files?.formulas??[]).map(o=>s`<li>
            <button type="button" ?disabled=${!t.answer} @click=${n(o.file)}>
              <b>${o.name}</b><span>${o.note||o.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function Wg({gauge:t},e){let n=t.pockets[0];return{cavities:t.pockets.length*e,deep_mm:n.brim_mm-n.floor_mm}}function pi(){if(a.formulas.apart)return void In().then(t=>t&&pi());f({view:"start",start_complaint:""}),ws(),Se(),di(jg),requestAnimationFrame(()=>document.querySelector("h1")?.focus())}async function jg(){f({files:await Be()}),To()}function Ng(t){Se(),ci(t,`Saved in ${t}.`)}async function di(t){f({start_complaint:""});try{await t()}catch(e){f({start_complaint:e instanceof w?e.message:String(e)})}}async function Qc(t){await di(t),window.scrollTo(0,0)}function Yc(){let{chosen_mould:t,start_complaint:e}=a,n=Kc(Ng);return s` <h1 tabindex="-1">What will you make?</h1>
    <p class="choice">
      ${a.run.file?s`<button type="button" @click=${()=>f({view:"run"})}>Back to the run</button>`:u}
      ${t||n?s`<button type="button" @click=${pi}>Back to runs and moulds</button>`:u}
    </p>
    ${e?s`<p class="alarm" role="alert">${e}</p>`:u}
    ${(a.files?.cut??[]).map(o=>s`<p class="alarm">
          More lies in ${o.folder} than is looked at: ${o.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}
    ${t?Vc(t,Qc):n||s`${Ug()} ${Jg()} ${zg()} ${Ac(di)}`}`}function Ug(){let t=a.files?.runs??[],e=t.filter(o=>!o.shipped),n=t.filter(o=>o.shipped);return s`<section aria-labelledby="runs-title">
    <h2 id="runs-title">Open a run</h2>
    ${e.length?s`<ul class="cards">
            ${e.map(Gc)}
          </ul>`:s`<p class="aside">None of your own in ${a.files?.folder} yet.</p>`}
    <h3>Examples</h3>
    <ul class="cards">
      ${n.map(Gc)}
    </ul>
  </section>`}function Gc(t){return s`<li>
    <button type="button" @click=${()=>Qc(()=>Xe(t.file))}>
      <b>${t.name||t.file}</b><span>${t.file}</span>
    </button>
  </li>`}function zg(){return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    <ul class="cards">
      ${Hg()}${a.catalogue.map(t=>s`<li>
            <button type="button" @click=${()=>ci(t.path)}>
              <b>${t.name}</b
              ><span>${A(Y(a.units,t.brimful_ml))}, ${t.cavities} in one; ${t.description}</span>
            </button>
          </li>`)}
    </ul>
  </section>`}function Hg(){return(a.files?.moulds??[]).filter(e=>!e.shipped).map(e=>s`<li>
        <button type="button" @click=${()=>ci(e.file)}>
          <b>${e.name||e.file}</b><span>${Vg(e.file)}</span>
        </button>
      </li>`)}function Jg(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">New run with a mould of your own</h2>
    ${qg()}
    <div class="choice">
      ${Object.entries(li).map(([t,e])=>s`<button type="button" @click=${()=>Hc(t)}>${e}</button>`)}
    </div>
  </section>`}function qg(){return $a(Nt).map(t=>{let e=String(Z(t.text)?.name??"").trim()||Kg(t)||"a mould without a name yet";return s`<div class="banner">
      <p>What you typed of <b>${e}</b> is still here, and in no file yet.</p>
      <div class="choice">
        <button type="button" @click=${()=>di(()=>qc(t))}>Continue</button>
        <button type="button" @click=${()=>{xe(Nt,t.id),vt()}}>Discard it</button>
      </div>
    </div>`})}var Kg=({file:t})=>a.files?.moulds.find(e=>e.file===t)?.name;function Vg(t){let e=al(t);return e?"complaint"in e?`your own, ${t}; it cannot be measured: ${e.complaint}`:`${A(Y(a.units,e.brimful_ml))}, ${e.cavities} in one; your own, ${t}`:`your own, ${t}; measuring ...`}var mi=Math.PI/8,Gg=500,ys=class extends HTMLElement{#n=[];#o=0;#t;#u=!1;#e=!1;#i="";#r=!1;#s="";#a="Drawing ...";#c=0;#m=!1;#f=new ResizeObserver(()=>this.#t?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#l(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#c),this.#h.disconnect(),this.#f.disconnect(),this.#t?.end(),this.#t=void 0,this.#s="",URL.revokeObjectURL(this.#i)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#t||this.#e)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#u)){this.#u=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#t=new n(e),this.#f.observe(e)}catch{this.#e=!0}this.#u=!1,this.#l(),await this.#d()}}#g(){let e=this.#t||this.#e;!this.#m||!e||this.#p()===this.#s||(window.clearTimeout(this.#c),this.#c=window.setTimeout(()=>{this.#d()},Gg))}#p(){let{of:e}=this.#n[this.#o],n=this.#e?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#e?{...i,"cut-open":!0}:i})}async#d(){let e=this.#p();if(e!==this.#s){try{let n=await We(JSON.parse(e));if(e!==this.#p()||!this.isConnected)return;this.#e?(URL.revokeObjectURL(this.#i),this.#i=URL.createObjectURL(n)):this.#t?.show(wo(await n.arrayBuffer())),this.#s=e,this.#a=""}catch(n){if(!(n instanceof w))throw n;this.#a=n.message}this.#l()}}#_(e){e(),this.#a="Drawing ...",this.#l(),this.#d()}#l(){let e=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#o?"true":"false"}
            @click=${()=>this.#_(()=>this.#o=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#a}</p>`;we(s`${e} ${this.#e?this.#y():this.#w()} ${n}`,this)}#w(){let e=i=>()=>this.#t?.turn(i),n=i=>()=>this.#t?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return s`<canvas
        role="img"
        aria-label="${this.#n[this.#o]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-mi)}>Turn left</button>
        <button type="button" @click=${e(mi)}>Turn right</button>
        <button type="button" @click=${n(mi)}>From above</button>
        <button type="button" @click=${n(-mi)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return s`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#i?s`<img
              src=${this.#i}
              alt="${this.#n[this.#o].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",ys);var Zc=document.getElementById("page");function Xc(){return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${kc(pi)} ${Al()}
    <main id="main" tabindex="-1" class=${a.is_old&&a.view!=="start"?"old-now":""}>
      ${a.fault?s`${a.view==="start"?u:s`<h1>Brimwright</h1>`}
              <p class="alarm" role="alert">${a.fault}</p>`:u}
      ${a.view==="run"?xc():a.view==="formula"?Rc():a.view==="start"?Yc():a.fault?u:s`<h1>Brimwright</h1>
                    <p>Reading the runs of this folder ...</p>`}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}Js(()=>{we(Xc(),Zc),tp()});addEventListener("resize",tp);we(Xc(),Zc);document.addEventListener("keydown",t=>{!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||a.view==="run"&&(t.preventDefault(),(t.shiftKey?bo:He)())});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return bl();a.view!=="run"&&a.view!=="formula"||H(a.run)&&Tt()});function Qg(){if(!a.run.file)return vs();f({fault:void 0}),H(a.run)&&Tt(),Q()}function vs(){f({fault:void 0}),Tl().catch(t=>{f({fault:Yg(t)}),t instanceof w&&t.may_pass&&window.setTimeout(vs,2e3)})}function Yg(t){return t instanceof w&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}function tp(){let t=document.querySelector(".foremost")?.offsetHeight??0;document.documentElement.style.setProperty("--foremost",`${t}px`)}rl();Qs(Qg);vs();
