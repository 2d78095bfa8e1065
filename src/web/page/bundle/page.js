var li=globalThis,di=li.ShadowRoot&&(li.ShadyCSS===void 0||li.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,fl=Symbol(),ml=new WeakMap,ui=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==fl)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(di&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=ml.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&ml.set(n,t))}return t}toString(){return this.cssText}},hl=e=>new ui(typeof e=="string"?e:e+"",void 0,fl);var gl=(e,t)=>{if(di)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=li.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},Es=di?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return hl(n)})(e):e;var{is:Mf,defineProperty:Of,getOwnPropertyDescriptor:Ff,getOwnPropertyNames:Cf,getOwnPropertySymbols:Lf,getPrototypeOf:Ef}=Object,ci=globalThis,_l=ci.trustedTypes,If=_l?_l.emptyScript:"",Bf=ci.reactiveElementPolyfillSupport,po=(e,t)=>e,Is={toAttribute(e,t){switch(t){case Boolean:e=e?If:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},wl=(e,t)=>!Mf(e,t),$l={attribute:!0,type:String,converter:Is,reflect:!1,useDefault:!1,hasChanged:wl};Symbol.metadata??=Symbol("metadata"),ci.litPropertyMetadata??=new WeakMap;var ht=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=$l){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&Of(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:s}=Ff(this.prototype,t)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let d=i?.call(this);s?.call(this,l),this.requestUpdate(t,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??$l}static _$Ei(){if(this.hasOwnProperty(po("elementProperties")))return;let t=Ef(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(po("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(po("properties"))){let n=this.properties,o=[...Cf(n),...Lf(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(Es(i))}else t!==void 0&&n.push(Es(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return gl(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:Is).toAttribute(n,o.type);this._$Em=t,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),l=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:Is;this._$Em=i;let d=l.fromAttribute(n,s.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(t,n,o,i=!1,s){if(t!==void 0){let l=this.constructor;if(i===!1&&(s=this[t]),o??=l.getPropertyOptions(t),!((o.hasChanged??wl)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(t)&&!this.hasAttribute(l._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:s},l){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,l??n??this[t]),s!==!0||l!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:l}=s,d=this[i];l!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,s,d)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};ht.elementStyles=[],ht.shadowRootOptions={mode:"open"},ht[po("elementProperties")]=new Map,ht[po("finalized")]=new Map,Bf?.({ReactiveElement:ht}),(ci.reactiveElementVersions??=[]).push("2.1.2");var Ws=globalThis,bl=e=>e,pi=Ws.trustedTypes,yl=pi?pi.createPolicy("lit-html",{createHTML:e=>e}):void 0,js="$lit$",gt=`lit$${Math.random().toFixed(9).slice(2)}$`,Ns="?"+gt,Wf=`<${Ns}>`,Xt=document,fo=()=>Xt.createComment(""),ho=e=>e===null||typeof e!="object"&&typeof e!="function",Hs=Array.isArray,Rl=e=>Hs(e)||typeof e?.[Symbol.iterator]=="function",Bs=`[ 	
\f\r]`,mo=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,vl=/-->/g,kl=/>/g,Qt=RegExp(`>|${Bs}(?:([^\\s"'>=/]+)(${Bs}*=${Bs}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),xl=/'/g,Tl=/"/g,Pl=/^(?:script|style|textarea|title)$/i,Us=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),r=Us(1),A=Us(2),yv=Us(3),je=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Sl=new WeakMap,Zt=Xt.createTreeWalker(Xt,129);function Dl(e,t){if(!Hs(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return yl!==void 0?yl.createHTML(t):t}var Al=(e,t)=>{let n=e.length-1,o=[],i,s=t===2?"<svg>":t===3?"<math>":"",l=mo;for(let d=0;d<n;d++){let c=e[d],h,m,$=-1,y=0;for(;y<c.length&&(l.lastIndex=y,m=l.exec(c),m!==null);)y=l.lastIndex,l===mo?m[1]==="!--"?l=vl:m[1]!==void 0?l=kl:m[2]!==void 0?(Pl.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=Qt):m[3]!==void 0&&(l=Qt):l===Qt?m[0]===">"?(l=i??mo,$=-1):m[1]===void 0?$=-2:($=l.lastIndex-m[2].length,h=m[1],l=m[3]===void 0?Qt:m[3]==='"'?Tl:xl):l===Tl||l===xl?l=Qt:l===vl||l===kl?l=mo:(l=Qt,i=void 0);let x=l===Qt&&e[d+1].startsWith("/>")?" ":"";s+=l===mo?c+Wf:$>=0?(o.push(h),c.slice(0,$)+js+c.slice($)+gt+x):c+gt+($===-2?d:x)}return[Dl(e,s+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},go=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let s=0,l=0,d=t.length-1,c=this.parts,[h,m]=Al(t,n);if(this.el=e.createElement(h,o),Zt.currentNode=this.el.content,n===2||n===3){let $=this.el.content.firstChild;$.replaceWith(...$.childNodes)}for(;(i=Zt.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let $ of i.getAttributeNames())if($.endsWith(js)){let y=m[l++],x=i.getAttribute($).split(gt),E=/([.?@])?(.*)/.exec(y);c.push({type:1,index:s,name:E[2],strings:x,ctor:E[1]==="."?fi:E[1]==="?"?hi:E[1]==="@"?gi:tn}),i.removeAttribute($)}else $.startsWith(gt)&&(c.push({type:6,index:s}),i.removeAttribute($));if(Pl.test(i.tagName)){let $=i.textContent.split(gt),y=$.length-1;if(y>0){i.textContent=pi?pi.emptyScript:"";for(let x=0;x<y;x++)i.append($[x],fo()),Zt.nextNode(),c.push({type:2,index:++s});i.append($[y],fo())}}}else if(i.nodeType===8)if(i.data===Ns)c.push({type:2,index:s});else{let $=-1;for(;($=i.data.indexOf(gt,$+1))!==-1;)c.push({type:7,index:s}),$+=gt.length-1}s++}}static createElement(t,n){let o=Xt.createElement("template");return o.innerHTML=t,o}};function en(e,t,n=e,o){if(t===je)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=ho(t)?void 0:t._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=en(e,i._$AS(e,t.values),i,o)),t}var mi=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??Xt).importNode(n,!0);Zt.currentNode=i;let s=Zt.nextNode(),l=0,d=0,c=o[0];for(;c!==void 0;){if(l===c.index){let h;c.type===2?h=new yn(s,s.nextSibling,this,t):c.type===1?h=new c.ctor(s,c.name,c.strings,this,t):c.type===6&&(h=new _i(s,this,t)),this._$AV.push(h),c=o[++d]}l!==c?.index&&(s=Zt.nextNode(),l++)}return Zt.currentNode=Xt,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},yn=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=en(this,t,n),ho(t)?t===u||t==null||t===""?(this._$AH!==u&&this._$AR(),this._$AH=u):t!==this._$AH&&t!==je&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):Rl(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==u&&ho(this._$AH)?this._$AA.nextSibling.data=t:this.T(Xt.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=go.createElement(Dl(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new mi(i,this),l=s.u(this.options);s.p(n),this.T(l),this._$AH=s}}_$AC(t){let n=Sl.get(t.strings);return n===void 0&&Sl.set(t.strings,n=new go(t)),n}k(t){Hs(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of t)i===n.length?n.push(o=new e(this.O(fo()),this.O(fo()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=bl(t).nextSibling;bl(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},tn=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(t,n=this,o,i){let s=this.strings,l=!1;if(s===void 0)t=en(this,t,n,0),l=!ho(t)||t!==this._$AH&&t!==je,l&&(this._$AH=t);else{let d=t,c,h;for(t=s[0],c=0;c<s.length-1;c++)h=en(this,d[o+c],n,c),h===je&&(h=this._$AH[c]),l||=!ho(h)||h!==this._$AH[c],h===u?t=u:t!==u&&(t+=(h??"")+s[c+1]),this._$AH[c]=h}l&&!i&&this.j(t)}j(t){t===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},fi=class extends tn{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===u?void 0:t}},hi=class extends tn{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==u)}},gi=class extends tn{constructor(t,n,o,i,s){super(t,n,o,i,s),this.type=5}_$AI(t,n=this){if((t=en(this,t,n,0)??u)===je)return;let o=this._$AH,i=t===u&&o!==u||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,s=t!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},_i=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){en(this,t)}},Ml={M:js,P:gt,A:Ns,C:1,L:Al,R:mi,D:Rl,V:en,I:yn,H:tn,N:hi,U:gi,B:fi,F:_i},jf=Ws.litHtmlPolyfillSupport;jf?.(go,yn),(Ws.litHtmlVersions??=[]).push("3.3.3");var ot=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new yn(t.insertBefore(fo(),s),s,void 0,n??{})}return i._$AI(e),i};var zs=globalThis,vn=class extends ht{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=ot(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return je}};vn._$litElement$=!0,vn.finalized=!0,zs.litElementHydrateSupport?.({LitElement:vn});var Nf=zs.litElementPolyfillSupport;Nf?.({LitElement:vn});(zs.litElementVersions??=[]).push("4.2.2");var Ol=()=>{},Js=!1;function Fl(e){Ol=e}function Ke(){Js||(Js=!0,queueMicrotask(()=>{Js=!1,Ol()}))}function Cl(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}var ke=e=>e.replaceAll("~","~0").replaceAll("/","~1");function _(e,t){let n=e;for(let o of Cl(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function F(e,t,n){return qs(e,Cl(t),n)}function qs(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let d=[...e],c=qs(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let s={...e??{}},l=qs(s[o],i,n);return l===void 0?delete s[o]:s[o]=l,s}var Vs=()=>/^#([0-9a-f]{48})$/.exec(location.hash)?.[1],$i="";function Ll(e){$i=e,sessionStorage.setItem("key",e)}Ll(Vs()??sessionStorage.getItem("key")??"");var El=()=>Vs()!==void 0;function Il(e){addEventListener("hashchange",()=>{let t=Vs();if(!t)return;let n=t!==$i;Ll(t),e(n)})}var Bl={status:0,body:new Blob};async function Hf(e,t,n,o){try{let i=await fetch(t,{method:e,body:n,headers:{"X-Bench-Key":$i},signal:o});return{status:i.status,body:await i.blob()}}catch{return Bl}}function Uf(e,t,n,o){return new Promise(i=>{let s=new XMLHttpRequest;s.open(e,t),s.setRequestHeader("X-Bench-Key",$i),s.responseType="blob",s.upload.onprogress=l=>o(l.total?l.loaded/l.total:0),s.onerror=()=>i(Bl),s.onload=()=>i({status:s.status,body:s.response}),s.send(n)})}var Wl={send:(e,t,n,o,i)=>n!==void 0&&o?Uf(e,t,n,o):Hf(e,t,n,i)};var zf=Wl,Me=({problem:e,remedy:t})=>[e,t].filter(Boolean).join("; "),b=class extends Error{constructor(n,o,i={}){super(o.line);this.status=n;this.complaint=o;this.answer=i}status;complaint;answer;get may_pass(){return this.status===0||this.status===503}},Jf={file:"",field:"",problem:"Brimwright is not running",remedy:"start brimwright again and open the address it prints; what you typed is kept here",line:"Brimwright is not running: start it again and open the address it prints. What you typed is kept here."},jl="what you typed is kept here";function qf(e){let[t,n]=e===503?["the program has too much to do at once",`it is asked again in a moment; ${jl}`]:["internal error in brimwright (your files are not at fault)",`${jl}: change something, or ask again`];return{file:"",field:"",problem:t,remedy:n,line:`${t} (answer ${e}); ${n}.`}}function Nl(e,t){if(e===0)return new b(0,Jf);let n=qf(e),o={...n,...t.complaint};return e>=500&&Object.assign(o,{is_fault:!0,remedy:o.remedy||n.remedy}),new b(e,o,t)}async function Vf(e,t){try{return Nl(e,JSON.parse(await t.text()))}catch{return Nl(e,{})}}async function Hl(...e){let{status:t,body:n}=await zf.send(...e);if(t>=200&&t<300)return n;throw await Vf(t,n)}var nn=async(...e)=>JSON.parse(await(await Hl(...e)).text()),it=(e,t)=>nn("POST",e,JSON.stringify(t)),Rt=()=>nn("GET","/api/files"),X=e=>nn("GET",`/api/file?file=${encodeURIComponent(e)}`),kn=e=>nn("PUT","/api/file",JSON.stringify(e)),Ul=(e,t)=>it("/api/file/rename",{file:e,to:t}),Ks=(e,t=!1)=>it("/api/file/remove",{file:e,even_so:t}),zl=e=>it("/api/file/restore",{removed:e}),Kf=12e3,Gf=([e,t])=>`&${encodeURIComponent(`file:${e}`)}=${t??""}`;async function xn(e){let t={changed:{},unreadable:[]};for(let n of Jl(e)){let{changed:o,unreadable:i}=await nn("GET",`/api/changed?wait=0${n}`);Object.assign(t.changed,o),t.unreadable.push(...i)}return t}function Jl(e){let t=[""];for(let n of[...e].map(Gf))t.at(-1).length+n.length>Kf?t.push(n):t[t.length-1]+=n;return t}var Yf=crypto.randomUUID(),Gs=2e4;async function ql(e,t){let[n,...o]=Jl(e);if(o.length)return xn(e);let i=`/api/changed?wait=${Gs/1e3}&tab=${Yf}${n}`;return nn("GET",i,void 0,void 0,t)}var Vl=e=>it("/api/plan",e),Kl=e=>it("/api/plan",{...e,explain:!0}),Gl=e=>it("/api/gauge",{...e,inspect:!0}),st=e=>it("/api/gauge",e),Ys=e=>it("/api/list",{what:e}),Yl=async()=>(await Ys("fats")).fats,Ql=async()=>(await Ys("moulds")).moulds,Zl=async()=>(await Ys("tips")).tips,Pt=e=>Hl("POST","/api/document",JSON.stringify(e)),Xl=async e=>(await it("/api/document",{...e,open:!0})).address,eu=(e,t)=>nn("POST",`/api/mesh?name=${encodeURIComponent(e.name)}`,e,t),tu=async(e,t)=>(await it("/api/keep",{upload:e,as:t})).file;var Q=e=>`${JSON.stringify(e,null,2)}
`;function q(e){try{let t=JSON.parse(e??"");return t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0}catch{return}}var Z=["pour","pipe","apart"],xe=["studio","own_fats","own_tips"],wi=e=>xe.includes(e);var nu={};function rt(e,t){(nu[e]??=[]).push(t)}function re(e,t){for(let n of nu[e]??[])n(t)}var Te=e=>e.slice(0,e.lastIndexOf("/")+1),Oe=e=>e.slice(e.lastIndexOf("/")+1),ou=(e,t)=>{let n=Te(e);return n?Qf(n+t):t};function Qf(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function Dt(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function Tn(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|formula|fats|tips))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let s=i===1?e:`${n}_${i}${o}`;if(!t.some(l=>l.file===s))return s}}var Zf=["mould","formula","file","own_fats","own_tips"];function Qs(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?Qs(o,i):Zf.includes(n)?[i]:[]})}function Zs(e,t){let[n,o]=[e,t];for(let i of["/$schema","/id",...Qs(e)])[n,o]=[F(n,i,void 0),F(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function Xs(e,t){let n=["/id",...Qs(e)].filter(o=>_(e,o)!==_(t,o));return o=>n.reduce((i,s)=>_(i,s)===_(e,s)?F(i,s,_(t,s)):i,o)}var H=(e,t)=>({name:e,label:t,unit:"mm"}),At=H("height","Floor to brim"),bi={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},er={block:{words:"Box, loaf or slab",measures:[H("length","Longer side at the brim"),H("width","Shorter side"),At,bi,{...H("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[H("floor_diameter","Across the floor"),H("brim_diameter","Across the brim"),At]},fluted_cup:{words:"Fluted cup",measures:[H("floor_diameter","Across the floor"),H("brim_diameter","Across the brim"),At,{name:"flutes",label:"Flutes",unit:"",count:!0},H("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},H("across_flats","Across the flats"),At,bi]},dome:{words:"Bowl",measures:[H("diameter","Across the brim"),At]},half_ball:{words:"Half ball",measures:[H("diameter","Across the brim")]},ball:{words:"Ball",measures:[H("diameter","Across")]},half_ring:{words:"Half ring",measures:[H("centre_diameter","Ring, middle to middle of the tube"),H("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[H("outer_floor_diameter","Cup, across the floor"),H("outer_brim_diameter","Cup, across the brim"),H("post_floor_diameter","Post, at its foot"),H("post_brim_diameter","Post, at its top"),At]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[H("height","Height"),H("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[At,bi],points:{columns:[H("x","From the left"),H("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[H("side","Straight edge, tip to round"),At,bi]}},iu=Object.fromEntries(Object.entries(er).map(([e,{words:t}])=>[e,t])),Sn=e=>er[e]?.measures??[],Mt=e=>er[e]?.points;var tr=(e,t)=>String(_(e,t)??"").trim(),_o=e=>tr(e,"/shape/kind"),Ge=(e,t)=>_(e,`/${t}`)!==void 0,nr=e=>["body","skin"].includes(tr(e,"/mesh/role"));function Fe(e,t){let n=_(e,t);return Array.isArray(n)?n:[]}function su(e,t){return(Mt(_o(e))?.columns??[]).map(({name:o})=>String(_(t,`/${o}`)??"").trim())}function $o(e){return Fe(e,"/shape/points").flatMap((t,n)=>su(e,t).every(Boolean)?[n]:[])}function yi(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return Fe(e,"/shape/points").flatMap((n,o)=>t(su(e,n))?[o]:[])}var or=e=>Fe(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function ru(e){let t=e,n=(o,i)=>{if(!Array.isArray(_(t,o)))return;let s=i.map(l=>_(e,`${o}/${l}`));t=F(t,o,s)};return Mt(_o(e))&&n("/shape/points",$o(e)),n("/water/weighings",or(e)),t}function vi(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let s=n==="/shape/points"?$o(e):or(e);return`${n}/${s[Number(o)]??o}${i}`}function wo(e){let t=[],n=i=>tr(e,i)!=="",o=(i,s)=>{i||t.push(s)};if(Ge(e,"shape")){let i=_o(e);o(i!=="","the shape");for(let{name:l,label:d,optional:c}of Sn(i))o(c||n(`/shape/${l}`),d.toLowerCase());let s=Mt(i);s&&o($o(e).length>=s.least,`${s.least} points at least`)}if(Ge(e,"water")){o(n("/water/temperature"),"the water's temperature"),o(_(e,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o(_(e,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(or(e).length>0,"a weighing of water")}return!nr(e)&&!Ge(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var on={name:"run",list:"runs",new_name:({shipped:e,file:t,now:n})=>e?Oe(t):Dt(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},Rn={name:"formula",list:"formulas",new_name:({shipped:e,file:t,now:n})=>e?Oe(t):Dt(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},ir=(e,t)=>({name:e,list:t,new_name:({file:n})=>Oe(n),written:n=>n,is_begun:()=>!0}),ki=ir("studio","studios"),xi=ir("fats","fats"),Ti=ir("tips","tips"),Se={name:"mould",list:"moulds",new_name:({now:e})=>Dt(String(e.name),".json"),written:e=>({...ru(e),name:String(e.name??"").trim()}),is_begun:e=>Ge(e,"shape")||Ge(e,"mesh")};var au={kind:on,id:"",file:"",version:null,shipped:!1,now:{},saved:void 0,unanswered:[]},Ye={view:"reading",came_from:"set-up",formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:au,formulas:{},beside:{},past:[],future:[],batch:0,is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",new_formula:{name:"",copied:""},printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(eh()),folded:new Set,units:Xf(),announcement:""},a=Ye;function Xf(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}var lu="set-up ";function eh(){try{let e=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(e)?e.filter(t=>typeof t=="string"):[]}catch{return[]}}function th(){let e=[...Ye.open].filter(t=>t.startsWith(lu));localStorage.setItem("parts",JSON.stringify(e))}function f(e){Object.assign(Ye,e),Ke()}var U=e=>f({announcement:e});function w(e,t){Object.assign(e,t),Ke()}function _t(e,t){let{[e]:n,...o}=Ye.formulas;f({formulas:t?{...o,[e]:t}:o})}function Ot(e,t){let n=new Set(Ye[e]);n.delete(t)||n.add(t),f({[e]:n}),t.startsWith(lu)&&th()}function Si(e=au){f({run:e,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,batch:0,complaint:void 0,typed:void 0,measured:void 0})}function de(e){Ye.open.has(e)||f({open:new Set(Ye.open).add(e)})}function sn(e,t,{name:n,note:o}={}){if(!Ye.files)return;let i={file:t,name:String(n??""),note:String(o??""),shipped:!1},s=Ye.files[e].filter(d=>d.file!==t),l=Ye.files[e].findIndex(d=>d.file===t);s.splice(l<0?s.length:l,0,i),f({files:{...Ye.files,[e]:s}})}async function at({kind:e,name:t,text:n,from:o,about_to:i,is_own:s}){for(;;){let{runs:l=[],formulas:d=[],moulds:c=[],studios:h=[],fats:m=[],tips:$=[]}=a.files??{},y=Tn(t,[...l,...d,...c,...h,...m,...$]);i?.(y);let x=await nh(y,n,o);if(sn(e.list,y,q(x.there.text)??{name:y}),x.is_new||s?.(x.there))return x.there}}async function nh(e,t,n){try{return{is_new:!0,there:await kn({file:e,version:null,text:t,from:n})}}catch(o){if(!(o instanceof b)||o.status!==409)throw o;return{is_new:!1,there:o.answer}}}var Ri=e=>`unsaved ${e.name} ${a.files?.folder??""} `;function rn({kind:e,id:t,file:n,version:o,shipped:i,now:s},l){if(e.is_begun(s))try{let d={id:t,file:n,version:o,shipped:i,text:Q(s),copy:l};localStorage.setItem(Ri(e)+t,JSON.stringify(d))}catch{}}function sr(e,t){try{return JSON.parse(localStorage.getItem(Ri(e)+t)??"null")??void 0}catch{return}}var an=(e,t)=>localStorage.removeItem(Ri(e)+t);function Pi(e){let t=Ri(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>sr(e,o)??[])}var oh=300,W=e=>e.now!==e.saved;function bo(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function Re(e,t,n=t){let o=await X(t),i=ih(e,JSON.parse(o.text),o.shipped),s=sr(e,n),l=s?.copy&&o.shipped?await sh(e,s,i):void 0;if(l)return an(e,n),Re(e,l);let{version:d,shipped:c=!1}=o,h={kind:e,id:n,file:t,version:d,shipped:c,now:i,saved:i,unanswered:[]};return s&&rh(h,s,o),h}var ih=(e,t,n=!1)=>e.name==="run"&&!n&&t.id===void 0?{...t,id:crypto.randomUUID()}:t;async function sh(e,t,n){if(!a.files?.[e.list].some(s=>s.file===t.copy))return;let o=q(t.text),i=q((await X(t.copy)).text);if(!(!o||!i||Q(o)===Q(n)))return Zs(e.written(o),i)?t.copy:void 0}function rh(e,t,n){let o=q(t.text);if(!o||Q(o)===Q(e.now))return an(e.kind,e.id);w(e,{now:o}),!(t.version===n.version||n.shipped)&&(w(e,{version:t.version}),gu(e,n))}function ce(e,t){let n=e.now;w(e,{now:t,failed:void 0,...e.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),rn(e),re("edited",{file:e,before:n})}var uu=new WeakMap,rr=async e=>uu.get(e),lt=e=>du(e,()=>ah(e)),Pn=e=>du(e,()=>e.shipped?cu(e,pu):Promise.resolve());function du(e,t){let n=rr(e).then(t);return uu.set(e,n.catch(()=>{})),n}async function ah(e){!W(e)||e.theirs||await cu(e,e.shipped||!e.file?pu:mu)}async function cu(e,t){w(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof b&&w(e,{failed:Me(n.complaint)}),n}}async function pu(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,s=t.written(o),l=await at({kind:t,name:t.new_name(e),text:Q(s),from:i,about_to:m=>rn(e,m),is_own:({text:m})=>i!==void 0&&Zs(s,q(m)??{})}),d=JSON.parse(l.text),c=Xs(s,d),h=e.now===o?d:c(e.now);an(t,n),w(e,{id:l.file,file:l.file,version:l.version,shipped:!1,now:h,saved:d}),W(e)&&rn(e),i!==void 0&&re("copied",{file:e,from:i,renamed:c})}async function mu(e){let{version:t,now:n}=e,o=Q(e.kind.written(n));w(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{Di(e,n,(await kn({file:e.file,version:t,text:o})).version)}catch(i){if(!(i instanceof b)||i.status!==409)throw i;fu(e,i.answer),W(e)&&!e.theirs&&await mu(e)}}function Di(e,t,n){w(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),W(e)?rn(e):an(e.kind,e.id),sn(e.kind.list,e.file,t)}function fu(e,{version:t,text:n}){if(n===Q(e.kind.written(e.now)))return Di(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);if(w(e,{unanswered:[]}),o)return w(e,{version:t,saved:void 0,theirs:void 0});let i=W(e)||e.theirs?void 0:q(n);i?lh(e,i,t):gu(e,{version:t,text:n})}function lh(e,t,n){re("giving_way",{file:e}),w(e,{set_aside:e.now,is_taken:!0,now:t}),Di(e,t,n),U(`${e.file} was changed outside this page, and stands here as it is now.`),re("gave_way",{file:e})}var hu=e=>w(e,{set_aside:void 0,is_taken:void 0});function gu(e,{version:t,text:n}){w(e,{theirs:{version:t,text:n}}),rn(e),U(`${e.file} was changed outside this page. Which version do you want to keep?`),re("conflict",{file:e})}function _u(e){if(!e.theirs)return;let t=q(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return w(e,{failed:n})}re("giving_way",{file:e}),w(e,{set_aside:e.now,now:t}),Di(e,t,e.theirs.version),re("gave_way",{file:e})}function $u(e){e.theirs&&(w(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),rn(e),re("unwritten",{file:e}))}function wu(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e,o=e.is_taken;ce(e,t),w(e,{set_aside:o?void 0:n})}var bu=e=>(e.theirs??e).version;function yu(e,t){w(e,{id:t,file:t}),re("renamed",{file:e,renamed:n=>n})}async function vu(e){let{version:t,text:n}=await X(e.file),o=q(n);if(!o||e.theirs||t===e.version)return;let i=Xs(e.now,o);if(W(e))return w(e,{version:t,now:i(e.now),saved:o});w(e,{version:t,now:o,saved:o}),re("renamed",{file:e,renamed:i})}var ku=e=>e.shipped||!e.file?[]:[[e.file,bu(e)]];async function ar(e,t,n,o){let i=e.file,s=()=>bu(e)===t&&e.file===i;if(!s()||(await rr(e),!s()))return!1;o(),await lr();let l=await uh(i,n);return await rr(e),s()&&(fu(e,l),W(e)&&!e.theirs&&re("unwritten",{file:e})),!0}async function uh(e,t){let n=await t(e);return n===null?{version:n,text:null}:X(e)}var lr=()=>new Promise(e=>setTimeout(e,oh));var dh=300,ch=1200,Ai="",xu=0;function yo(){let e={run:{file:a.run,now:a.run.now}};for(let t of Z){let n=a.formulas[t];n&&(e[t]={file:n,now:n.now})}for(let t of xe){let n=a.beside[t];n&&(e[t]={file:n,now:n.now})}return e}function Ft(e=""){let t=performance.now();e&&e===Ai&&t-xu<=ch&&a.past.length||ur(yo()),f({future:[]}),Ai=e,xu=t}var ur=e=>f({past:[...a.past,e].slice(-dh)});function Dn(e){ur(Tu(yo(),e,()=>e.saved??{}))}function Tu(e,t,n){let o=Object.entries(e).map(([i,s])=>s.file===t?[i,{file:t,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function dr(e,t){let n=o=>o.map(i=>Tu(i,e,t));f({past:n(a.past),future:n(a.future)})}function Mi(){let e=a.past.at(-1);e&&(f({past:a.past.slice(0,-1),future:[...a.future,yo()]}),Ru(e,"Undone"))}function Su(){let e=a.future.at(-1);e&&(f({past:[...a.past,yo()],future:a.future.slice(0,-1)}),Ru(e,"Redone"))}function Ru(e,t){Ai="",f({typed:void 0});for(let n of[...xe,...Z,"run"])ph(n,e);U(t)}function ph(e,t){let n=t[e];if(wi(e))return mh(e,n);let o=e==="run"?n?.file===a.run:a.formulas[e]!==void 0;!n||!o||(e!=="run"&&_t(e,n.file),n.file.now!==n.now&&ce(n.file,n.now))}function mh(e,t){t&&t.file===a.beside[e]&&t.file.now!==t.now&&ce(t.file,t.now)}var Oi=e=>e===a.run||Z.some(t=>a.formulas[t]===e)||xe.some(t=>a.beside[t]===e);rt("giving_way",({file:e})=>{Oi(e)&&(Ai="",ur(yo()),f({typed:void 0}))});for(let e of["copied","renamed"])rt(e,({file:t,renamed:n})=>dr(t,n));function An(e){return e==="run"?a.run:wi(e)?a.beside[e]:a.formulas[e]}var fh=e=>An(e)?.now,g=(e,t)=>_(fh(e),t),M=(e,t)=>String(g(e,t)??"");function pe(e,t){let n=g(e,t);return Array.isArray(n)?n:[]}function K(e,t,n){let o=g(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function B(e,t,n){let o=An(e);!o||_(o.now,t)===n||(Ft(`${e} ${t}`),ce(o,F(o.now,t,n)))}function Pu(e,t){let n=An(e);n&&(Ft(),f({typed:void 0}),ce(n,t(n.now)))}function Mn(e){Ft(),f({typed:void 0});for(let[t,n]of e){let o=An(t);o&&ce(o,n(o.now))}}var $t=e=>ou(a.run.file,e);function Pe(e,t){let n=$t(e);return t?.some(o=>o.file===n)?n:e}var Au=(e,t)=>{let{[e]:n,...o}=a.beside;f({beside:t?{...o,[e]:t}:o})};async function hh(e,t){try{let n=await Re(e,t);return W(n)&&Dn(n),n}catch(n){if(!(n instanceof b||n instanceof SyntaxError))throw n;return}}async function ln(e,t,n){let o=a.beside[e];if(o?.file===n)return o;let i=await hh(t,n);return Au(e,i),i&&W(i)&&re("unwritten",{file:i}),i?.theirs&&re("conflict",{file:i}),i}var Mu=()=>$t("studio.json");async function On(e=!1){let t=Mu(),n=(a.files?.studios??[]).some(o=>o.file===t);a.beside.studio?.file!==t&&(n||e?await ln("studio",ki,t):Au("studio",void 0))}async function Ou(){a.run.shipped&&await Pn(a.run);let e=Mu();await ln("studio",ki,e)||(await gh(e),await ln("studio",ki,e))}async function gh(e){try{await kn({file:e,version:null,text:Q({schema:"brimwright.studio/1"})})}catch(t){if(!(t instanceof b)||t.status!==409)throw t}sn("studios",e)}var Du=(e,t)=>Te(e.file)+t;async function _h(e){try{return q((await X(e)).text)!==void 0}catch(t){if(!(t instanceof b))throw t;return!1}}async function Fi(e){let t=a.formulas[e];if(!t)return;t.shipped&&await Pn(t);let n=String(_(t.now,"/own_fats")??"");if(n){let l=Du(t,n);return ln("own_fats",xi,await _h(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&Te(l.file)===Te(t.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await Fu(xi,Du(t,"my.fats.json"),i);return B(e,"/own_fats",Oe(s)),ln("own_fats",xi,s)}async function cr(){a.run.shipped&&await Pn(a.run);let e="/pipe/beads/own_tips",n=String(_(a.run.now,e)??"")||String(_(a.beside.studio?.now,"/own_tips")??"");if(n)return ln("own_tips",Ti,$t(n));let o=Te(a.run.file),i=(a.files?.tips??[]).find(d=>!d.shipped&&Te(d.file)===o),s={schema:"brimwright.tips/2",tips:[]},l=i?.file??await Fu(Ti,`${o}my.tips.json`,s);return a.beside.studio?B("studio","/own_tips",Oe(l)):B("run",e,Oe(l)),ln("own_tips",Ti,l)}async function Fu(e,t,n){let{file:o}=await at({kind:e,name:t,text:Q(n)});return sn(e.list,o),o}function Cu(e,t){let n=(i,s)=>String(_(i,s)??"").endsWith(Oe(t));for(let i of Z)e===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&B(i,"/own_fats",e.file);let o="/pipe/beads/own_tips";e===a.beside.own_tips&&n(a.run.now,o)&&B("run",o,e.file)}async function Ct(){for(let e of["pour","pipe"]){let t=_(a.run.now,`/${e}/formula`);typeof t=="string"&&t?await $h(e,Pe(t,a.files?.formulas)):_t(e,void 0)}}async function $h(e,t){if(a.formulas[e]?.file===t)return;let n=Z.map(o=>a.formulas[o]).find(o=>o?.file===t);if(_t(e,n),!n)try{let o=await pr(t);_t(e,o),W(o)&&re("unwritten",{file:o}),o.theirs&&re("conflict",{file:o})}catch(o){if(!(o instanceof b||o instanceof SyntaxError))throw o}}async function pr(e){let t=await Re(Rn,e);return W(t)&&Dn(t),t}var vo=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function Fn(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=s=>20+t+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:l,indices:d,material:c}]})=>({name:s,positions:new Float32Array(e,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(e,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function Eu(e,t,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:d,indices:c}=e;for(let h=0;h<c.length;h+=3){let m=[];for(let $=0;$<3;++$){let y=3*c[h+$],x=3*c[h+($+1)%3],E=d[y+i]-t,ue=d[x+i]-t;if(E>0==ue>0)continue;let bn=E/(E-ue),ai=[1e3*(d[y]+bn*(d[x]-d[y])),1e3*s*(d[y+o]+bn*(d[x+o]-d[y+o]))];E>0?m.push(ai):m.unshift(ai)}m.length===2&&l.push([m[0],m[1]])}return l}function Iu(e){let t=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of e){let s=t(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of e){let s=[],l=n.get(t(i[0]))?.shift();for(;l;)s.push(l[0]),l=n.get(t(l[1]))?.shift();s.length>2&&o.push(s)}return o}function ko(e){let t=e.positions,[n,o,i,s,l,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let h=0;h<t.length;h+=3)i=Math.min(i,t[h]),s=Math.max(s,t[h]),l=Math.min(l,t[h+1]),d=Math.max(d,t[h+1]),n=Math.min(n,t[h+2]),o=Math.max(o,t[h+2]);let c=n+(o-n)*.50137;return{loops:Iu(Eu(e,c)),left:1e3*i,right:1e3*s,floor:1e3*l,brim:1e3*d,cut_y:-1e3*c}}function Bu(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(s=>Iu(Eu(e,n+s*o,"level"))).reduce((s,l)=>Lu(l)>1.001*Lu(s)?l:s)}function Lu(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function mr(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([s,l],d)=>{let[c,h]=i[(d+1)%i.length];if(!(Math.min(l,h)>t||Math.max(l,h)<t))for(let m of l===h?[s,c]:[s+(t-l)/(h-l)*(c-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[e.left,e.right]}var Wu=40,wh=2e3,fr=0;async function ju(e){let t=await Pt({kind:"glb",gauge:e}),n=Fn(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Cn(e){let[t,n]=await Promise.all([st(e),ju(e)]),o=ko(n);return{gauge:t,outline:o,above:Bu(n,o)}}async function bh(e){let{pockets:t}=await st(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:Wu},(i,s)=>`${(n*(s+1)/Wu).toFixed(4)} mm`);return st({...e,depth:o})}function Qe(){yh()}async function yh(){let e=_(a.run.now,"/pour/mould");if(typeof e!="string")return;let t=++fr,n=Pe(e,a.files?.moulds);try{let[o,i]=await Promise.all([bh({file:n}),ju({file:n})]);t===fr&&f({measured:{mould:n,gauge:o,outline:ko(i)},measuring_failed:void 0})}catch(o){if(t!==fr)return;if(!(o instanceof b))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Qe,wh)}}var vh=30,kh=1200,Nu=0,hr=!1,gr=!1;function $r(e,t,n){let o=t==="mesh"?a.mesh:void 0;f({mould:{way:t,title:n,open:e,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),br()}var Lt=()=>f({mould:void 0,mesh:void 0}),Ln=(e,t,n)=>$r(bo(Se,e),t,n);async function Uu(e,t){let n=await Re(Se,e,t?crypto.randomUUID():e),o=String(n.now.name??e);t&&w(n,{now:{...n.now,name:""}}),$r(n,"form",t?`A copy of ${o}`:`Change ${o}`)}async function zu({id:e,file:t,text:n}){let o=t?await Re(Se,t,e):bo(Se,JSON.parse(n),e);$r(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var L=()=>a.mould,D=()=>L().open.now;function ie(e,t){xh(e),ce(L().open,F(D(),e,t))}var _r="",Hu=0;function xh(e){let t=performance.now(),{past:n}=L();(e!==_r||t-Hu>kh||!n.length)&&w(L(),{past:[...n,D()]}),w(L(),{future:[]}),[_r,Hu]=[e,t]}function Ju(){let{past:e,future:t,open:n}=L(),o=e.at(-1);o&&(w(L(),{past:e.slice(0,-1),future:[...t,n.now]}),Vu(o,"Undone"))}function qu(){let{past:e,future:t,open:n}=L(),o=t.at(-1);o&&(w(L(),{past:[...e,n.now],future:t.slice(0,-1)}),Vu(o,"Redone"))}function Vu(e,t){_r="",f({typed:void 0}),ce(L().open,e),U(t)}var Th=["name","note","owned","unmould_after"];function wr(e){let t=D(),n=Object.keys({...e,...t}).filter(l=>e?.[l]!==t[l]);(!e||n.some(l=>!Th.includes(l)))&&w(L(),{is_old:!0});let i=n.some(l=>L().complaint?.field===`/${l}`),s=n.some(l=>!["name","note"].includes(l));(L().is_old||i||s)&&br()}function br(){clearTimeout(Nu),Nu=window.setTimeout(()=>{Sh()},vh)}async function Sh(){if(hr)return void(gr=!0);let{mould:e}=a;if(!e)return;let t=e.open.now;if(!(!Ge(t,"shape")&&!Ge(t,"mesh"))){if(wo(t).length)return w(e,{complaint:void 0});hr=!0;try{let n=Se.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Cn(o);e.open.now===t&&w(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof b))throw n;e.open.now===t&&yr(n)}finally{hr=!1,gr&&br(),gr=!1}}}function yr(e){let{field:t,problem:n,remedy:o,keep:i,entry:s}=e.complaint,l=t?`${n}; ${o}`:e.message;w(L(),{complaint:{field:vi(D(),t),line:l,keep:i&&{...i,at:vi(D(),i.at)},about:s===void 0?void 0:vi(D(),`${t}/${s}`)}})}var vr=e=>[...new Set(e.flatMap(t=>a.formulas[t]??[]))],kr=()=>xe.flatMap(e=>a.beside[e]??[]),Ku=e=>e.filter(t=>t.theirs),wt=e=>Ku([...vr(e==="apart"?["apart"]:["pour","pipe"]),...kr()])[0],Ci=()=>[a.run,...vr(Z),...kr()].filter(e=>e.is_taken&&!e.theirs),Li=()=>Ku([a.run,...vr(Z),...kr()]);var xo=()=>a.formulas.apart?"apart":"run",Gu=e=>f({dangers:{...a.dangers,[xo()]:e}});function Yu(e){let t=e.cautions.filter(n=>n.severity==="danger");Gu(t.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function Qu(e){e.lye_heavy&&Gu([{text:Me(e),is_of_heat:!1}])}var Rh=400,Ph=2e3,Ei=0;function To(){clearTimeout(Ei),Ei=window.setTimeout(()=>{Ze()},Rh)}async function Ze(){clearTimeout(Ei);let{run:e}=a;try{await lt(e),W(e)&&!e.theirs&&e===a.run&&To()}catch(t){if(!(t instanceof b))throw t;t.may_pass&&(Ei=window.setTimeout(()=>{Ze()},Ph))}}var Zu=Promise.resolve();function En(){let e=Zu.then(Dh);return Zu=e.catch(()=>{}),e}async function Dh(){for(let e of Z){let t=a.formulas[e];!t||!W(t)||t.theirs||(t.shipped&&e!=="apart"&&await Pn(a.run),await lt(t))}for(let e of xe){let t=a.beside[e];t&&W(t)&&!t.theirs&&await lt(t)}}function Xu(e){let t=a.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=Pe(String(n?.mould??""),a.files?.moulds);return{file:Tn("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(t.name??""),sell:t.sell??"",...t.spoilage===void 0?{}:{spoilage:t.spoilage},pour:{mould:s,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...Ah(t)}}}function Ah(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}var Xe=new Map,So=new Set,Mh={changed:{},unreadable:[]},In=()=>new Set([...Z.flatMap(e=>a.formulas[e]??[]),...xe.flatMap(e=>a.beside[e]??[])]);async function ed(){let e=Oh(),t=new Set([...In()].map(({file:o})=>o));for(let o of Xe.keys())!e.has(o)&&!t.has(o)&&Xe.delete(o);for(let o of So)e.has(o)||So.delete(o);let n=[...e].filter(o=>!Xe.has(o));for(let[o,i]of await td(n))Xe.has(o)||Xe.set(o,i)}async function td(e){let t=e.filter(o=>!So.has(o)),n=t.length?await xn(new Map(t.map(o=>[o,null]))):Mh;return Sr(n.unreadable),new Map(e.map(o=>[o,n.changed[o]??null]))}var xr=async e=>(await td([e])).get(e)??null,Tr=()=>new Map([...Xe].filter(([e])=>!So.has(e)));function Oh(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add($t(o)),o.includes("..")||e.add(o))},n=a.run.now;e.add($t("studio.json")),t(_(n,"/pour/mould")),t(_(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])t(_(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||t(_(n,`/${o}/formula`));for(let{file:o,now:i}of In()){let s=i.own_fats;typeof s=="string"&&s&&e.add(Te(o)+s).add(s)}t(_(a.beside.studio?.now,"/own_tips"));for(let o of xe)e.delete(a.beside[o]?.file??"");return e}function nd(e,{changed:t}){let n=Object.keys(t).filter(o=>Xe.has(o)&&Xe.get(o)===e.get(o));for(let o of n)Xe.set(o,t[o]);return n}var Sr=e=>e.forEach(t=>So.add(t));function od(){return[...In()].flatMap(({file:e,version:t})=>{let n=Xe.get(e)??t;return Xe.delete(e),n===t?[]:[e]})}var id=0,Rr=()=>id;function Pr(e){++id,f({is_old:!0,changed_beside:e})}var Fh=1e3,Ch=450,Ii=!1,un=!1,Dr=0;function ee(){f({is_old:!0}),Ii?un=!0:Bn()}async function Bn(){if(Ii){un=!0;return}Ii=!0,sd(!1);try{do un=!1,await Lh();while(un)}finally{Ii=!1,sd(!0),Ke()}}var sd=e=>{document.documentElement.dataset.settled=String(e)};function rd(){let{run:e}=a,{apart:t}=a.formulas,{file:n,now:o}=e;return()=>{let i=e===a.run&&(n===e.file||o===e.now);return t===a.formulas.apart&&(t!==void 0||i)}}async function Lh(){let e=rd();try{await En(),await ed(),e=rd();let{apart:t}=a.formulas;if(wt(t?"apart":"run"))return f({is_old:!0});let n=Rr(),o=t?Xu(t.file):{file:a.run.file,run:a.run.now},i=await Vl(o);if(window.clearTimeout(Dr),!e())return void(un=!0);f({plan:i,planned:o,complaint:void 0}),Yu(i);let s=n===Rr();f({is_old:un||!s}),s&&f({changed_beside:void 0})}catch(t){if(!(t instanceof b))throw t;if(!e())return void(un=!0);Eh(t)}}function Eh(e){f({is_old:!0}),window.clearTimeout(Dr);let t=()=>{f({complaint:e.complaint}),Qu(e.complaint)};a.complaint||!a.plan?t():Dr=window.setTimeout(t,Ch),e.may_pass&&window.setTimeout(ee,Fh)}var Bi=e=>Object.values(a.formulas).includes(e),Wi=e=>Object.values(a.beside).includes(e),ad=e=>`${String(_(e,"/pour/formula"))}
${String(_(e,"/pipe/formula"))}`;function Ih(e,t){_(e,"/pour/mould")!==_(t,"/pour/mould")&&Qe(),ad(e)!==ad(t)&&Ct(),ee(),To()}var Bh=ee;function Wh(e,t){for(let n of["pour","pipe"]){if(a.formulas[n]!==e)continue;let o=`/${n}/formula`,i=s=>String(_(s,o)??"").endsWith(Oe(t))?F(s,o,e.file):s;dr(a.run,i),i(a.run.now)!==a.run.now&&ce(a.run,i(a.run.now))}}function ld(){rt("edited",({file:e,before:t})=>{e===a.run?Ih(t,e.now):Bi(e)||Wi(e)?Bh():e===a.mould?.open&&wr(t)}),rt("gave_way",({file:e})=>{if(e===a.mould?.open)return wr();e===a.run&&(Qe(),Ct().then(ee)),ee()}),rt("unwritten",({file:e})=>{e===a.run?Ze():(Bi(e)||Wi(e))&&ee()}),rt("conflict",({file:e})=>{(Bi(e)||Wi(e))&&f({is_old:!0})}),rt("renamed",({file:e})=>{e===a.run&&(localStorage.setItem("run",e.file),Qe(),Ct()),ee()}),rt("copied",({file:e,from:t})=>{Bi(e)&&Wh(e,t),Wi(e)&&Cu(e,t),e===a.run&&(localStorage.setItem("run",e.file),On().then(ee))})}var Ro=["runs","formulas","moulds"],Po=["weigh","set-up","watch","money","mould","print"],Ne=e=>Ro.some(t=>t===e),ut=e=>Po.some(t=>t===e);var Do=()=>f({own_fats:{}});function Et(e){let t=Ao(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function Ao(e){let t=a.formulas[e],n=_(t?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=a.beside.own_fats;if(o&&[Te(t.file)+n,n].includes(o.file))return dd(o.now)??"none";let i=`${t.file}
${n}`,s=a.own_fats[i];return s||(ud(i,"waiting"),jh(n,t.file).then(l=>ud(i,l)),"waiting")}var ud=(e,t)=>f({own_fats:{...a.own_fats,[e]:t}});async function jh(e,t){for(let n of new Set([Te(t)+e,e])){let o=dd(await Nh(n));if(o)return o}return"none"}var dd=e=>Array.isArray(e?.fats)?e.fats.map(Hh):void 0;async function Nh(e){try{return q((await X(e)).text)}catch{return}}var Hh=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:Uh(n)});function Uh(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var Wn=[],Mo;function ji(){Wn.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||Wn.push(e);Mo===void 0&&pd()}function cd(e){let t=a.own_moulds[e];return!t&&e!==Mo&&!Wn.includes(e)&&Wn.push(e),Mo===void 0&&Wn.length&&pd(),t}async function pd(){for(;(Mo=Wn.shift())!==void 0;){let e=Mo,t=await zh(e);f({own_moulds:{...a.own_moulds,[e]:t}})}}async function zh(e){try{let{pockets:t}=await st({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof b))throw t;let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var hd=()=>f({own_tips:{}}),Ar=!1;function Mr(){return!a.tips&&!Ar&&(Ar=!0,Zl().then(e=>f({tips:e}),gd).finally(()=>Ar=!1)),a.tips??[]}function Or(e){let t=$t(e),n=a.beside.own_tips;if(n?.file===t)return fd(n.now);let o=a.own_tips[t];return o||!e||a.typed?o??[]:(md(t,[]),X(t).then(({text:i})=>md(t,fd(q(i))),gd),[])}var md=(e,t)=>f({own_tips:{...a.own_tips,[e]:t}});function fd(e){let t=e?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function gd(e){if(!(e instanceof b))throw e}var Ni=300,Jh=5e3,yd=2e3,qh=500,_d=!1,Oo=new AbortController,vd=()=>Oo.abort(),kd=()=>document.visibilityState==="hidden";function xd(){if(_d)return;_d=!0;let e=async()=>{Oo=new AbortController;let t=await Vh(Oo).then(()=>kd()?Jh:Ni,()=>Oo.signal.aborted?Ni:yd);await $d(Ni),await $d(t-Ni,Oo.signal),e()};e()}var $d=(e,t)=>new Promise(n=>{if(e<=0||t?.aborted)return n();setTimeout(n,e),t?.addEventListener("abort",()=>n())}),Td=()=>[a.run,...a.mould?[a.mould.open]:[],...In()],Sd=()=>new Map(Td().flatMap(ku)),wd=()=>JSON.stringify([[...Sd().keys()],[...Tr().keys()]]);async function Vh(e){let[t]=od();t!==void 0&&await bd(t);let[n,o]=[Sd(),Tr()],i=new Map([...o,...n]),s=[...o].every(([c,h])=>i.get(c)===h),l=s&&!kd()?await Kh(i,e):await xn(i);Sr(l.unreadable),await Gh(n,l);let[d]=nd(o,s?l:await xn(o));d!==void 0&&await bd(d)}async function Kh(e,t){let[n,o]=[wd(),Date.now()],i=window.setInterval(()=>{(wd()!==n||Date.now()-o>Gs+yd)&&t.abort()},qh);try{return await ql(e,t.signal)}finally{window.clearInterval(i)}}async function Gh(e,{changed:t}){let n=In();for(let o of Td()){let i=e.get(o.file);i===void 0||!(o.file in t)||(n.has(o)?await Yh(o,i):await ar(o,i,xr,()=>{}))}}async function Yh(e,t){await ar(e,t,xr,()=>Pr(e.file))&&(Do(),ee())}async function bd(e){Pr(e),await lr(),Do(),hd(),f({measured:void 0}),Qe(),ji(),await Promise.all([Ct(),On(!0)]),ee()}var Fr=r`<span aria-hidden="true">⚠</span> Danger`;function dn(e,t="",n){let o=dt(e,n);return o.length?r`<div class="dangers" id=${t||u}>
    ${o.map(i=>r`<p class="danger"><strong>${Fr}</strong> ${i}</p>`)}
  </div>`:u}function dt(e,t){let n=e==="pour"?"pipe":"pour";return a.dangers[e==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>e==="apart"||o.batter!==n).filter(o=>t===void 0||o.batch_pieces===void 0||o.batch_pieces===t).map(o=>o.text)}function Rd(){let e=Ne(a.view)||xo()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var Pd=()=>Rd().length>0;function Dd(){let e=Rd(),t=Xh();return!e.length&&!t?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?r`<div role="alert" class="dangers">
            ${e.map(({from:n,text:o})=>r`<p class="danger"><strong>${Fr}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${t?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${Qh()?r`<button type="button" @click=${Zh}>To the question</button>`:u}
          </div>`:u}
  </section>`}var Qh=()=>wt(xo())!==void 0&&!Ne(a.view);function Zh(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function Xh(){if(!a.run.file||a.view==="reading")return"";let e=wt(xo());return e?`${e.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:a.is_old&&a.changed_beside?`${a.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}var Ad="examples/spring_cups.run.json";async function Md(e){let t=await Rt();f({files:t});let n=t.runs.some(o=>o.file===e.run);try{await It(n?e.run:eg(t),n||!e.run?e.view:void 0)}catch(o){let i=o instanceof b?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Od(){let[e,t]=await Promise.all([Yl(),Ql()]);f({fats:e,catalogue:t})}function eg(e){let t=localStorage.getItem("run"),n=i=>e.runs.some(s=>s.file===i);return e.open?e.open:t&&n(t)?t:e.runs.find(i=>!i.shipped)?.file??(n(Ad)?Ad:e.runs[0]?.file??"")}async function It(e,t="weigh"){if(!e)return f({view:"runs"});a.run.file&&W(a.run)&&await Ze();let n=await Re(on,e);Si(n),f({view:t}),localStorage.setItem("run",n.file),W(n)&&(Dn(n),To());let o=Bn();Qe(),await Promise.all([o,Ct(),On()]),xd()}var tg=()=>(a.files?.studios??[]).some(e=>e.file==="studio.json");async function Cr(e){let t=a.run.now,n=t.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:e.name,sell:e.cavities,pour:{mould:e.mould,formula:e.formula,line:{below_brim:e.deep_mm>15?"5 mm":"0 mm"}}};tg()||(o.note=`Losses, scales and spoilage were taken over from "${String(t.name)}": check them.`,o.spoilage=t.spoilage??"0 %",o.losses={pour:n.pour??{}},o.scales=t.scales??{},t.money&&!a.run.shipped&&(o.money=t.money));let{file:i}=await at({kind:on,name:Dt(e.name,".run.json"),text:Q(o)});await It(i,"set-up")}var ng="examples/plain_bars.run.json";function He(e){Do();let t=ut(a.view)?a.view:a.came_from;f({view:"formula",came_from:t,formula_of:e,picking:void 0,typed:void 0})}async function Fo(e){let t=["pour","pipe"].find(n=>a.run.file&&a.formulas[n]?.file===e);if(t)return He(t);a.run.file||await It(ng,"reading"),await og(e)}async function og(e){let t={past:a.past,future:a.future};f({run_steps:t,past:[],future:[]});try{_t("apart",await pr(e))}catch(n){throw f({...t,run_steps:void 0}),n}f({plan:void 0,complaint:void 0}),He("apart"),Bn()}async function ig(){let e=a.formulas.apart!==void 0;return await Lr()?(f({view:e?"weigh":a.came_from,typed:void 0}),!0):!1}async function Lr(){return a.formulas.apart?await sg()?(Bn(),!0):!1:!0}async function sg(){try{await En()}catch(t){if(!(t instanceof b))throw t;return f({complaint:t.complaint}),!1}if(a.formulas.apart?.theirs)return U("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;_t("apart",void 0);let e={...a.dangers,apart:[]};return f({dangers:e,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Er(e){let{file:t}=a.formulas.apart;await ig()&&B("run",`/${e}/formula`,t)}var rg=e=>({schema:"brimwright.formula/2",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Fd=e=>Ld(rg(e));async function Cd(e,t){let{$schema:n,...o}=JSON.parse((await X(e)).text);await Ld({...o,name:t},e)}async function Ld(e,t){let n=Dt(String(e.name),".formula.json"),{file:o}=await at({kind:Rn,name:n,text:Q(e),from:t});await Fo(o)}function Ir(e){return Math.min(a.batch,e.batches.length-1)}function Bt(e){let{pieces:t,batches:n,batch_limits:o,around:i,...s}=e,l=Ir(e),d=n[l],{pour:c,pipe:h,dust:m,lye_pot:$,bottles:y}=d;return{...s,pour:c,pipe:h,dust:m,lye_pot:$,bottles:y,batch:d,place:`batches.${l}`,whippings:h?.whippings??[],whole:e}}var ae=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,ag=e=>e.cut?["loaf","loaves"]:["cast","casts"];function et(e,{pieces:t,casts:n}){let o=e.cut?ae(t,"bar"):ae(t,"piece");return n===t?o:`${o} from ${ae(n,...ag(e))}`}var Co=e=>e===1?"once":`${e} times`,jn=e=>e.batches.length>1,te=e=>e.pieces.batches>1;function Nn(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}function Ed(e,{count:t,numbers:n}){return te(e)?jn(e)?`made ${Co(t)}: ${t===1?"batch":"batches"} ${Nn(n.map(String))} of ${e.pieces.batches}`:`made ${Co(t)}`:""}function G(e){return te(e.whole)?`one batch, ${et(e.whole,e.batch)}`:""}var Id=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function Br(e,t){return Id(e)?`${et(e.whole,t)}${t.count>1?`, whipped ${Co(t.count)}`:""}`:""}function cn(e,t){let n=Br(e,t);return n&&`one whipping: ${n}`}var Bd=e=>te(e.whole)||Id(e),Hi=(e,t)=>`${ae(e,"filling")} of ${ae(t,"cavity","cavities")}`;var Wd=A`<path class="wall" d="M30 10l8 52h44l8-52" />`,jd={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:A`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${Wd}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:A`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:A`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${Wd}<path class="measure" d="M20 10h80" />`}};function Nd(e,t=""){let{name:n,words:o,drawing:i}=jd[e],s=`term ${e} ${t}`,l=a.open.has(s);return r`<span class="term"
    ><button
      type="button"
      aria-expanded=${l?"true":"false"}
      aria-label="What ${n} means"
      @click=${()=>Ot("open",s)}
    >
      <span aria-hidden="true">?</span></button
    >${l?r`<span class="term-words" role="note"
            >${i?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${i}</svg>`:u}<span><b>${n}</b>: ${o}</span></span
          >`:u}</span
  >`}var zi=28.349523125,Jd=25.4,lg=29.5735295625;function ct(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function T(e,t){return ug(ct(e,t))}var ug=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function Ue(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${ct(e,t)} %`:Wr(e)?"just below 0 %":"0.0 %"}var Wr=e=>e<0||Object.is(e,-0),qd=e=>Math.abs(e-Math.round(e))<1e-6;function Hd(e){return e?[0,1,2,3].find(t=>qd(e*10**t))??3:0}function Ud(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function dg(e){return[0,1,2].find(t=>e.every(n=>qd(n*10**t)))??3}function Ji(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function se(e,t){let n=s=>e[`${t}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-dg([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var Vd=.001;function Ui(e,t,n,o,i=1e-9){let s=10**n;return ct(o==="nearest"?e/t:Math.floor((e+i)/t*s)/s,n)}var zd=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function cg(e){if(!zd.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return zd.find(t=>Math.abs(t*zi-e)<.6*Vd)}function j(e,t,n="nearest"){let o=t.scale_step_g||.1,i=cg(o),s=Math.min(.6*Vd,o/2),l=i?Ui(t.g,1,Ud(o),n):Ui(t.g,1,Hd(o),n,s),d=i?Ui(t.g,zi,Hd(i),n,s):Ui(t.g,zi,Ud(o/zi),n),[c,h]=[`${t.g_text??l} g`,`${t.oz_text??d} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[h,c]:Ji(e,c,h)}var O=(e,t,n=1,o="nearest")=>j(e,{g:t,scale_step_g:10**-n},o);function me(e,t,n=1){return Ji(e,`${ct(t,n)} ml`,`${ct(t/lg,2)} US fl oz`)}function fe(e,t){return Ji(e,`${T(t,1)} mm`,pg(t))}function pg(e){let t=Math.round(Math.abs(e)/Jd*32),n=e<0&&t?"-":"",o=t%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(t/32),l=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",l].filter(Boolean).join(" ")} in`}var jr=([e])=>e,R=([e,t])=>t?`${e} (${t})`:e;function Kd(e,t){return Ji(e,`${ct(t,0)} \xB0C`,`${ct(t*1.8+32,0)} \xB0F`)}function Hn(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??Jd;return n*o}function Un(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var qi=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function zn(e){let t=new Date(/^\d{4}-\d\d-\d\d$/.test(e)?`${e}T12:00`:e);return Number.isNaN(t.getTime())?e:t.toLocaleDateString("en-GB",{dateStyle:"medium"})}function Wt(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}var Gd=e=>e.goes_into==="lye",Yd=({role:e})=>e==="alkali",mg=e=>Yd(e)?"down":"nearest",bt=(e,t)=>j(e,t,mg(t));function Jn(e){let t=e.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>Gd(i)),n=({one:i})=>i.role==="water",o=({one:i})=>Yd(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function Vi(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!Gd(t))}function qn(e,t=()=>{}){if(!e.theirs)return u;let n=e.theirs.text===null,o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{$u(e),t()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${e.failed?r`<p class="complaint" role="status">Not loaded: ${e.failed}.</p>`:u}
    <div class="choice">
      ${n?u:r`<button type="button" @click=${()=>_u(e)}>Load the saved file</button>`}
      <button type="button" @click=${i}>Overwrite it with this page</button>
    </div>
  </section>`}function Vn(e){if(e.theirs||!e.set_aside||Oi(e)&&!e.is_taken)return u;let t=()=>{Oi(e)&&Ft(),wu(e)};return r`<section class="banner quiet" aria-label="${e.file} was changed">
    <p>
      ${e.file} was changed outside this page, and stands here as it is
      now.${e.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${t}>Change to the other text</button>
      ${e.is_taken?r`<button type="button" @click=${()=>hu(e)}>Close</button>`:u}
    </div>
  </section>`}var pn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Qd=e=>(...t)=>({_$litDirective$:e,values:t}),Ki=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:C0}=Ml;var Zd=e=>e.strings===void 0;var fg={},Xd=(e,t=fg)=>e._$AH=t;var Y=Qd(class extends Ki{constructor(e){if(super(e),e.type!==pn.PROPERTY&&e.type!==pn.ATTRIBUTE&&e.type!==pn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!Zd(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===je||t===u)return t;let n=e.element,o=e.name;if(e.type===pn.PROPERTY){if(t===n[o])return je}else if(e.type===pn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return je}else if(e.type===pn.ATTRIBUTE&&n.getAttribute(o)===t+"")return je;return Xd(e),t}});var mn,Lo=[],Eo=()=>mn!==void 0;function Ce(e,t,n,o){if(!mn||mn.some(s=>s.id===n))return;let i=Lo.flatMap(({part:s})=>s??[]);mn.push({of:e,at:t,id:n,label:o,part:i.at(-1)??"",folds:Lo.flatMap(({fold:s})=>s??[])})}function ze(e,t){Lo.push(e);try{return t()}finally{Lo.pop()}}var ec=()=>{},tc=e=>{ec=e},Gi,hg=()=>[a.run.now,...Object.values(a.formulas).map(e=>e.now),...Object.values(a.beside).map(e=>e.now),a.formulas.apart,a.plan,a.fats,a.files];function Kn(){if(Eo())return[];let e=hg();return Gi?.of.length===e.length&&e.every((n,o)=>n===Gi.of[o])||(Gi={of:e,wanted:gg()}),Gi.wanted}function gg(){mn=[],Lo=[];try{return ec(),mn}finally{mn=void 0}}function nc(e){a.touched.has(e)||f({touched:new Set(a.touched).add(e)})}function oc(e,t){if(a.has_asked)return!1;let n=Kn().filter(o=>o.of===e&&(o.at===t||o.at.startsWith(`${t}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var ne=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function Je(e,t){let n=a.complaint;if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return yt(e)&&!oc(e,n.field)?Me(n):void 0}function he(e,t){return a.complaint?.field===t?Je(e,t):void 0}function yt(e){let t=a.complaint,n=An(e)?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function _g(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(g(e,n)??{}).length>1?t:n}function fn(){let e=a.complaint;if(e)for(let t of["run",...Z,...xe])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Je(t,n)&&document.getElementById(ne(t,n));if(o)return o}}function $g(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=wg(e,n);return o&&qi(t)?`${t.trim()} ${o}`:t}function wg(e,t){return Un(g(t,e.at))||e.unit||""}var Le=(e,t,n)=>t||n?r`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:u,Nr=!1;addEventListener("pointerdown",()=>Nr=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>Nr=!1,!0);var bg=()=>f({typed:void 0});function Hr(e){let{id:t}=e.target,n=()=>{bg(),nc(t)};Nr?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var yg=e=>typeof e=="string"&&e.startsWith("?")?e.slice(1).trim():void 0,vg=({unit:e=""},t)=>[e.replace("cm2","cm\xB2"),t?"required":""].filter(Boolean).join(", ")||u;function p(e){let t=e.of??"run",n=ne(t,e.at),o=g(t,e.at),i=yg(o),s=a.typed?.key===n,l=s?a.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||l.trim()===""&&(!e.optional||e.is_due===!0);d&&Ce(t,e.at,n,e.label);let c=Je(t,e.at),h=y=>{let x=y.target.value;f({typed:{key:n,text:x}});let E=$g(e,x);B(t,E===void 0&&e.takes_part?_g(t,e.at):e.at,E)},$=(s&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||e.hint||i;return r`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${c?"wants":""}"
  >
    <label for=${n} data-said=${vg(e,d)}>${e.label}</label>
    <input
      id=${n}
      aria-required=${e.optional&&!e.is_due?u:"true"}
      .value=${Y(l)}
      @input=${h}
      @blur=${Hr}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||$?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${Le(n,c,$)}
  </div>`}function Yi(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var le=e=>()=>document.getElementById(e),ge=(e,t)=>le(ne(e,t)),Io=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),kg=()=>document.activeElement;function vt(e){requestAnimationFrame(()=>Yi(e()))}function Gn(e,t,n,o=kg){U(t),Pu(e,n),vt(o)}function C(e,t,n,o,i){Gn(e,t,s=>F(s,n,o),i)}var jt=(e,t,n)=>`${ne(e,t)}-${n}`;function I(e,t){let n=he(e,t);return n?r`<p id=${ne(e,t)} class="complaint" tabindex="-1">${n}</p>`:u}var ic=(e,t,n)=>t.map(([o,i])=>r`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function _e(e,t,n,o){return r`<div class="choice" role="group" aria-label=${e}>${ic(t,n,o)}</div>`}function v({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:l,puts:d,then:c,hint:h,optional:m}){let $=i?jt(e,n,t.replaceAll(/\W+/g,"-")):ne(e,o),y=s===void 0&&!m;y&&Ce(e,o,$,t);let x=i?void 0:he(e,o),E=ue=>{if(ue===s)return;let bn=l.find(([ai])=>ai===ue)[1];C(e,`${t}: ${bn}`,n,d(ue),c&&ge(e,c(ue)))};return r`<div class="field asked ${x?"wants":""}">
    <p class="question" id="${$}-label" data-said=${y?"required":u}>${t}</p>
    <div
      class="choice"
      role="group"
      id=${$}
      tabindex="-1"
      aria-labelledby="${$}-label"
      aria-describedby=${x||h?`${$}-said`:u}
    >
      ${ic(s,l,E)}
    </div>
    ${Le($,x,h)}
  </div>`}function Ur(e,t,n,o){let i=ne("run",e),s=he("run",e),l=()=>C("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return r`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${s?`${i}-said`:u}
        @click=${l}
      >
        ${t}
      </button>
    </div>
    ${Le(i,s)}`}function be({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:s,chosen:l,take:d}){let c=ne(t,n),h=Je(t,n),m=l??M(t,n);!m&&!s&&Ce(t,n,c,e);let $=!m||o.some(([E])=>E===m),y=[["",i],...$?[]:[[m,m]],...o];return r`<div class="field choose ${h?"wants":""}">
    <label for=${c} data-said=${m||s?u:"required"}>${e}</label>
    <select
      id=${c}
      aria-required=${s?u:"true"}
      @change=${E=>{let ue=E.target.value;d?d(ue):B(t,n,ue||!s?ue:void 0)}}
      aria-invalid=${h?"true":"false"}
      aria-describedby=${h?`${c}-said`:u}
    >
      ${y.filter(([E])=>E||s||!m).map(([E,ue])=>r`<option value=${E} .selected=${Y(E===m)}>${ue}</option>`)}</select
    >${Le(c,h)}
  </div>`}function Yn(e,t,n=[]){let o=Pe(M("run",t),n);return be({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function kt({of:e="run",at:t,name:n,title:o,add:i,blank:s,body:l}){let d=jt(e,t,"part"),c=jt(e,t,"add"),h=()=>ze({part:o},l);return g(e,t)===void 0?r`<p class="choice">
      <button type="button" id=${c} @click=${()=>C(e,`${o} added`,t,s,Io(d))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>C(e,`${o} removed`,t,void 0,le(c))}
      >
        Remove
      </button>
    </div>
    ${I(e,t)} ${h()}
  </div>`}var sc=(e,t)=>`folded ${e} ${t}`,Qn=(e,t)=>de(sc(e,t));function P({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:s}){let l=sc(e,t);if(Eo())return r`${ze({fold:l},s)}`;(i||n.some(h=>Je(e,h)))&&de(l);let d=a.open.has(l);return r`<details .open=${d}>
    <summary @click=${h=>{h.preventDefault(),Ot("open",l)}}>${o}</summary>
    ${d?r`<div class="folded">${s()}</div>`:u}
  </details>`}var S=({of:e="run",at:t})=>pe(e,t),N=({of:e="run",at:t},n)=>jt(e,`${t}/${n}`,"item"),Qi=({of:e="run",at:t},n,o)=>jt(e,`${t}/${n}`,o),xg=({of:e="run",at:t})=>ne(e,t);function Bo(e,t,n,o){let{of:i="run",at:s,stays:l,and:d=c=>c}=e;Gn(i,t,c=>d(F(c,s,n.length||l?n:void 0),n.length),o)}function z(e,t,n){let o=S(e);Bo(e,`${n} added`,[...o,t],Io(N(e,o.length)))}function Tg(e,t,n){let o=S(e).filter((l,d)=>d!==t),i=Math.min(t,o.length-1),s=o.length>(e.least??0);Bo(e,`${n} removed`,o,s?le(Qi(e,i,"drop")):ge(e.of??"run",e.at))}function Sg(e,t,n,o){let i=[...S(e)],[s]=i.splice(t,1);i.splice(t+n,0,s);let l=n<0?"earlier":"later",c=t+n===0||t+n===i.length-1?n<0?"later":"earlier":l;Bo(e,`${o} moved ${l}`,i,le(Qi(e,t+n,c)))}function V(e,t,n){let o=S(e).length-1,i=o>=(e.least??0),s=e.in_order&&o>0;if(!i&&!s)return u;let l=(d,c,h)=>r`<button
      type="button"
      id=${Qi(e,t,c)}
      ?disabled=${h}
      aria-label="${n} ${c}"
      @click=${()=>Sg(e,t,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${l(-1,"earlier",t===0)} ${l(1,"later",t===o)}`:u}
    ${i?r`<button
            type="button"
            id=${Qi(e,t,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>Tg(e,t,n)}
          >
            ×
          </button>`:u}
  </div>`}function J(e,t,n){let o=xg(e),i=he(e.of??"run",e.at);return r`${Le(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${t}
    </button>`}function zr(e){let t=M(e,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${p({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F."})}
      ${p({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days."})}
    </div>
    ${Ag(e)}
    ${P({of:e,name:"density",pointers:["/measured_density"],summary:`Measured density${t&&`: ${t}`}`,body:()=>p({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var Rg=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],rc={after:"",mass:""},ac=3,Pg={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:ac},()=>rc)}}};function Dg(e){return g(e,"/drying/weighings")!==void 0?"weighed":g(e,"/drying")!==void 0?"law":g(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Ag(e){let t=Dg(e);return r`${v({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:Rg,puts:o=>({...K(e,"",["drying","water_lost_in_cure"]),...Pg[o]})})}
  ${t==="share"?r`<div class="row">
          ${p({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${t==="law"?r`<div class="row">
          ${p({label:"Of the batter's water, gone in the end",of:e,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${p({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${t==="weighed"?Mg(e):u}`}function Mg(e){let t={of:e,at:"/drying/weighings",least:ac};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${S(t).map((n,o)=>r`<div class="row named" id=${N(t,o)}>
          ${p({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${p({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${V(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${J(t,"One more weighing",()=>z(t,rc,"weighing"))}`}var Og=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Zi=e=>Et(e).map(t=>[t.id,t.name]),lc=["unsaid","Not given"],uc=["none","Holds none"],dc=e=>e===void 0?"unsaid":e==="none"?"none":"some",Fg=e=>t=>t==="some"?e:t==="none"?"none":void 0;function cc(e,t){return Jr(e,`${t}/contains_fat`,[lc,uc,["some","Holds fat"]],Zi(e))}function Jr(e,t,n,o){let i=dc(g(e,t)),s=n.some(([l])=>l===i)?i:void 0;return r`${v({of:e,question:"Fat in it",at:t,chosen:s,answers:n,puts:Fg({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${be({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${p({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:u}`}var Cg=[lc,uc,["some","Holds acid"],["typed","By what it takes up"]],Lg={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function qr(e,t){let n=`${t}/contains_acid`,o=g(e,`${n}/takes_up`)!==void 0?"typed":dc(g(e,n));return r`${v({of:e,question:"Acid in it",at:n,chosen:o,answers:Cg,puts:i=>Lg[i]})}
  ${o==="some"?r`<div class="row">
          ${be({label:"Which acid",of:e,at:`${n}/acid`,answers:Og.map(i=>[i,i]),unsaid:"choose ..."})}
          ${p({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${p({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Vr(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Vr(e,t,n){let o=g(e,t)===!0?"yes":"no";return v({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var mc={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function fc(e,t){let n=Ao(e);if(!Array.isArray(n)||!n.some(d=>d.id===t))return u;let i=pe("own_fats","/fats").findIndex(d=>d.id===t);if(!(i>=0&&a.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{Eg(e,t)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return P({of:"own_fats",name:t,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>ze({part:M("own_fats",`${l}/name`)||"Your own fat"},()=>Bg(l))})}async function Eg(e,t){await Fi(e),Qn("own_fats",t);let n=pe("own_fats","/fats").findIndex(o=>o.id===t);vt(le(`f-own_fats-fats-${n}-name`))}var Ig=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function Bg(e){let t=(n,o,i,s=!1)=>p({of:"own_fats",label:o,at:`${e}/${n}`,hint:i,optional:s});return r`${I("own_fats",e)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${t("name","Name of the fat")} ${t("source","The document","Supplier, name, date.")}
      ${t("lot","Lot",void 0,!0)}
    </div>
    ${v({of:"own_fats",question:"What it is",at:`${e}/kind`,chosen:M("own_fats",`${e}/kind`)||void 0,answers:Ig,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${Wg(`${e}/saponification_value`)}
    <div class="row">
      ${t("inci","INCI name")}
      ${t("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${t("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${P({of:"own_fats",name:`${e} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${e}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>jg(e)})}`}function Wg(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"?"range":"one",o=(i,s,l=!1)=>p({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return r`${v({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:e,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(e,"Saponification value"):r`${o(`${e}/low`,"Lowest")} ${o(`${e}/typical`,"Typical",!0)}
            ${o(`${e}/high`,"Highest")}`}
    </div>`}function jg(e){let t=(o,i,s,l)=>{let d=`${e}/${o}`,c=g("own_fats",d)!==void 0,h=()=>C("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${h}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?r`${I("own_fats",d)}${l()}`:u}
    </div>`},n=(o,i,s,l=!1)=>p({of:"own_fats",label:i,at:`${e}/${o}`,unit:s,number:l,short:!0});return r`<div class="items">
      ${t("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${e}/iodine_value`)=="object"?r`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${t("density","Density when molten",{at:"",low:"",high:""},()=>r`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${t("melting_range","Melting range",{low:"",high:""},()=>r`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${Ng(`${e}/fatty_acids`)}
    <div class="row">
      ${p({of:"own_fats",label:"Unsaponifiable, at most",at:`${e}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${p({of:"own_fats",label:"Note on the fat",at:`${e}/note`,optional:!0})}
    </div>`}var pc=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function Ng(e){let t=Object.keys(g("own_fats",e)??{}),n=pc.filter(([l])=>!t.includes(l)),o=l=>pc.find(([d])=>d===l)?.[1]??l,i=l=>`${e}/${ke(l)}`,s=l=>{let d=Array.isArray(g("own_fats",i(l))),c=(h,m)=>p({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${h}`,unit:"%",short:!0});return r`<div class="row">
      ${d?r`${c(0,"lowest")} ${c(1,"highest")}`:p({of:"own_fats",label:o(l),at:i(l),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(l)}"
        @click=${()=>C("own_fats",`${o(l)} removed`,t.length>1?i(l):e,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${I("own_fats",e)} ${t.map(s)}
    <div class="row">
      ${be({label:"Add a fatty acid",of:"own_fats",at:`${e}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&C("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}var Hg=["tsp/lb","tbsp/lb","tsp/kg"],Xi=["%","g/kg",...Hg].flatMap(e=>[`${e} of fats`,`${e} of batter`]),gc=[...Xi,"% of finished soap","g/kg of finished soap"];function hc(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function es(e,t,n,o,i=!1){let s=ne(e,t),[l,d]=hc(M(e,t),o),c=a.typed?.key===s?a.typed.text:l;!i&&!(l.trim()&&d)&&Ce(e,t,s,n);let m=Je(e,t),$=(x,E)=>{let ue=`${x.trim()} ${E}`.trim();B(e,t,i&&!x.trim()?void 0:ue),Ke()},y=x=>{let E=x.target.value,[ue,bn]=hc(E,o);f({typed:{key:s,text:E}}),$(ue,bn||d)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${Y(c)}
        @input=${y}
        @blur=${Hr}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${s}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${x=>$(c,x.target.value)}
      >
        <option value="" .selected=${Y(d==="")}>of what?</option>
        ${o.map(x=>r`<option value=${x} .selected=${Y(x===d)}>${x}</option>`)}
      </select>
    </div>
    ${Le(s,m)}
  </div>`}function Ug(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var zg=.01+1e-9;function ts(e,t){let{sum:n,unread:o}=Ug(t),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=zg?`${e} add to ${i(n)}.`:s>0?`${e} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-s)} too much.`}var _c=(e,t)=>Et(e).find(n=>n.id===t)?.name??t,Wo=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),ns=e=>S(Wo(e));function Qr(e){let t=ns(e),n=a.picking?.of===e&&a.picking.row===t.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>Jg(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?ts("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${t.length?u:Ce(e,"/fats",ne(e,"/fats"),"The fats")}
    ${n?wc(e):J(Wo(e),"Add a fat",()=>$c(e,t.length))} ${e_(e)}
  </section>`}function Jg(e,t,n){let o=`/fats/${t}`,i=_c(e,String(n[t].fat??""))||"Which fat?",s=he(e,`${o}/fat`)??he(e,o),l=a.picking?.of===e&&a.picking.row===t;return r`<li class="formula-row" id=${N(Wo(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${ne(e,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?Kr():$c(e,t)}
      >
        ${i}
      </button>
      ${p({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${V(Wo(e),t,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${l?wc(e):u}
    ${fc(e,String(n[t].fat??""))}
    ${P({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${Gg(n[t])}`,body:()=>Zg(e,t)})}
  </li>`}function $c(e,t){f({picking:{of:e,row:t,text:""}}),vt(le("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Kr(){let e=a.picking;f({picking:void 0}),e&&vt(ge(e.of,e.row<ns(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function Gr(e,t){let{row:n}=a.picking,o=ns(e);f({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};Bo(Wo(e),`${_c(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],ge(e,`/fats/${n}/share`))}var jo=e=>e.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function Yr(e,t){let n=jo(t).split(/\s+/).filter(Boolean),o=i=>n.every(s=>jo(i).includes(s));return o(`${e.name} ${e.id.replaceAll("_"," ")}`)?e.name:"own"in e?void 0:[...e.also_called,e.inci].find(o)}function wc(e){let{row:t,text:n}=a.picking,o=ns(e).map(m=>m.fat),i=qg(e,n),s=i.filter(m=>!o.includes(m.id)||o[t]===m.id),l=s.find(m=>m.id===a.picking.lit),d=m=>{f({picking:{of:e,row:t,text:m.target.value}})},c=m=>{let $=l?s.indexOf(l)+m:m>0?0:s.length-1,y=s[($+s.length)%s.length];y&&(f({picking:{of:e,row:t,text:n,lit:y.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${y.id}`)?.scrollIntoView({block:"nearest"})))},h=m=>{m.key==="Escape"&&Kr(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let $=s.find(x=>jo(x.name)===jo(n.trim())),y=l??(s.length===1?s[0]:$);m.key==="Enter"&&y&&Gr(e,y.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${l?`fat-${l.id}`:u}
          .value=${n}
          @input=${d}
          @keydown=${h}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${Kr}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let $=o.includes(m.id)&&o[t]!==m.id,y=Yr(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${$}
          aria-selected=${m===l||o[t]===m.id?"true":"false"}
          @click=${()=>Gr(e,m.id)}
        >
          ${m.name}${y===m.name||!y?"":`, ${y}`}${$?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{Vg(e,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function qg(e,t){let n=Et(e).filter(l=>Yr(l,t)!==void 0),o=t.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(d=>Yr(l,d)!==void 0).length,s=Math.max(...Et(e).map(i));return s?Et(e).filter(l=>i(l)===s):[]}async function Vg(e,t){if(!await Fi(e))return;let o=t.trim(),i=Kg(o,[...a.fats,...pe("own_fats","/fats")]),s=pe("own_fats","/fats").length;B("own_fats",`/fats/${s}`,{...mc,id:i,name:o}),Gr(e,i),Qn("own_fats",i),vt(ge("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function Kg(e,t){let n=jo(e).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!t.some(s=>s.id===i))return i}}function Gg(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be filled in":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var Yg=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],Qg={published:void 0,one:"",range:{low:"",typical:"",high:""}};function Zg(e,t){let n=`/fats/${t}/saponification_value`,o=g(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=g(e,`/fats/${t}/confirmed`)!==void 0,l=(d,c)=>p({label:d,of:e,at:c,number:!0,short:!0});return r` ${p({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${v({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:Yg,puts:d=>Qg[d],hint:Xg(e,M(e,`/fats/${t}/fat`))})}
  ${i==="one"?r`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?Vr(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function Xg(e,t){let n=Et(e).find(l=>l.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function e_(e){let t=Ao(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=M(e,"/own_fats");return P({of:e,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>p({label:"Its name, as it lies beside this formula",of:e,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var t_=e=>Z.includes(e);function os(){let e=a.complaint;return!e?.field||e.lye_heavy?!1:Kn().some(({of:t,at:n})=>yt(t)&&(n===e.field||n.startsWith(`${e.field}/`)))}function No(){let e=a.complaint?Kn():[];return e.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${e.length}</p>
    <ul class="choice">
      ${e.map(t=>r`<li>
            <button type="button" @click=${()=>n_(t)}>
              ${t.part?r`<small>${t.part}</small> `:u}${t.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function n_({of:e,id:t,folds:n}){for(let o of n)de(o);f({has_asked:!0}),t_(e)?(a.view!=="formula"||a.formula_of!==e)&&He(e):a.view!=="set-up"&&!(e==="own_fats"&&a.view==="formula")&&f({view:"set-up"}),requestAnimationFrame(()=>vt(le(t)))}var bc="danger-of-superfat";function Zr(e,t){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${p({label:"Superfat (share of all fat left unsaponified)",of:e,at:"/superfat",unit:"%",described_by:dt(e).length?bc:void 0})}
    </div>
    ${dn(e,bc)} ${o_(e)} ${u_(e,t)}
  </section>`}function o_(e){let t=pe(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return r`${v({of:e,question:"Alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>i_(t,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${t.map((i,s)=>s_(e,i,s,t.length>1))}
  ${t.length>1?r`<p class="total" role="status">
          ${ts("The two",t.map(i=>i.share))}
        </p>`:u}`}function i_(e,t){let n=(o,i)=>({purity:"",...e.find(s=>s.alkali===o),alkali:o,share:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function s_(e,t,n,o){let i=`/alkali/${n}`,s=String(t.alkali??""),l=he(e,i)??he(e,`${i}/alkali`);return r`<div class="formula-row">
    ${l?r`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||t.share!=="100 %"?p({label:`${s}: share of the fats it saponifies`,of:e,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${p({label:`${s}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document."})}
    </div>
    ${P({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${r_(t.purity_range)}`,body:()=>a_(e,i)})}
  </div>`}var r_=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function a_(e,t){let n=`${t}/purity_range`,o=g(e,n)!==void 0;return r`${v({of:e,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${p({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${p({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var l_={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function u_(e,t){let n=Object.keys(g(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(l_);return r`${v({of:e,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:c_(t)})}
    <div class="row">${n.map(s=>d_(e,s))}</div>`}function d_(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?p({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?p({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):p({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function c_(e){if(!(!e||a.is_old))return`It now makes a strength of ${T(e.lye_strength_percent,1)} %; ${T(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${T(e.water_percent_of_fats,1)} % of the fats.`}function Nt(e,t,n){let o=p_(e,t);return P({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${f_(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${yc(e,`${t}/allergens`,"Allergen","Add an allergen",(i,s)=>h_(e,i,s))}
        ${p({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function p_(e,t){let n=pe(e,`${t}/allergens`).length;return[g(e,`${t}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Xr={name:"",share:""},m_={unsaid:void 0,one:"",many:[Xr]};function f_(e,t,n){let o=g(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=l=>l==="many"&&o?[{...Xr,name:o}]:m_[l];return r`${v({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?p({label:"INCI name",of:e,at:t}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${yc(e,t,"INCI name","One more INCI name")}`:u}`}function h_(e,t,n){return v({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:g(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function yc(e,t,n,o,i){let s={of:e,at:t};return r`${S(s).map((l,d)=>r`<div class="row named" id=${N(s,d)}>
        ${p({label:`${n} ${d+1}`,of:e,at:`${t}/${d}/name`})}
        ${p({label:`Share ${d+1}`,of:e,at:`${t}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${d}`,d)??u} ${V(s,d,String(l.name||`${n} ${d+1}`))}
      </div>`)}
  ${J(s,o,()=>z(s,Xr,n))}`}var g_=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:R_},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:y_},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:v_},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:k_}];function ea(e){return g_.map(t=>{let n={of:e,at:`/${t.list}`},o=S(n),i=(s,l)=>r`<li class="formula-row" id=${N(n,l)}>
        ${$_(e,t,n,s,l)} ${t.row(e,`${n.at}/${l}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${t.aside}</p>`}
      ${J(n,t.add,()=>z(n,__(t),t.add.replace("Add ","")))}
    </section>`})}function __(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function $_(e,t,n,o,i){let s=`/${t.list}/${i}`,l=he(e,s),d=String(o.name||`number ${i+1} of the ${t.list}`);return r`${l?r`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${p({label:"Name",of:e,at:`${s}/name`})}
      ${t.list==="liquids"?u:es(e,`${s}/rate`,"How much",Xi)}
      ${V(n,i,d)}
    </div>`}function vc(e,t,n,o){let i=`${t}/goes_into`,s=g(e,i);return v({of:e,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:h=>h,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function kc(e,t,n){let o=g(e,`${t}/stirred_in`);return r`${vc(e,t,b_,n)}
  ${g(e,`${t}/goes_into`)==="lye"||o!==void 0?v({of:e,question:"Stirred into the lye",at:`${t}/stirred_in`,chosen:String(o??""),answers:w_,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var w_=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],b_=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function ta(e,t,n){let o=(l,d,c)=>l?`${d}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(l=>`${t}/${l}`);return P({of:e,name:`${t} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${p({label:"Bulk density (for spoons)",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${p({label:"True density (in the batter)",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${es(e,`${t}/limit`,"The most that the supplier's document allows",gc,!0)}`})}function na(e,t,n,o){let i=(l,d)=>l===void 0?"":l==="none"?`no ${d}`:d,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return P({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${cc(e,t)} ${o?qr(e,t):u}`})}var is=(e,t,n)=>Nt(e,t,String(n.name||"it"));function y_(e,t,n){return r`${kc(e,t,!0)}
    <div class="folds">${na(e,t,n,!0)} ${ta(e,t,n)} ${is(e,t,n)}</div>`}function xc(e,t,n){return P({of:e,name:`${t} place`,pointers:[`${t}/goes_into`,`${t}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>kc(e,t,!1)})}function v_(e,t,n){return r`<div class="folds">
    ${ta(e,t,n)} ${is(e,t,n)} ${xc(e,t,n)} ${na(e,t,n,!1)}
  </div>`}function k_(e,t,n){return r`${T_(e,t)}
    <div class="folds">
      ${ta(e,t,n)} ${is(e,t,n)} ${xc(e,t,n)} ${na(e,t,n,!0)}
    </div>`}var x_=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function T_(e,t){let n=`${t}/dispersed_in`,o=g(e,n)!==void 0,i=g(e,`${n}/from`);return r`${v({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${be({label:"Which oil",of:e,at:`${n}/fat`,answers:Zi(e),unsaid:"choose ..."})}
            ${p({label:"Oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${v({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:x_,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var S_=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function R_(e,t,n){let o=(i,s,l)=>P({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:s,body:l});return r`${D_(e,t,n)}
    ${vc(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${M_(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>P_(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>qr(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>p({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${is(e,t,n)}
    </div>`}function P_(e,t){let n=g(e,t)===!0?"ice":"liquid";return v({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function D_(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...K(e,t,["replaces","rate"]),[s]:""});return r`${v({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:A_,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${p({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?es(e,`${t}/rate`,"Rate",Xi):u}`}var A_=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function M_(e,t){let n=`${t}/composition`,o=typeof g(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(d,c)=>p({label:d,of:e,at:`${n}/${c}`,unit:"%",short:!0});return r`${v({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${Jr(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Zi(e)])}
          <div class="row">
            ${p({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${be({label:"Built-in figures of",of:e,at:n,answers:S_.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var oa=!1;function Tc(e){let{plan:t,explanation:n}=a,o=n?.of!==t;return o&&!oa&&F_(),{workings:O_(n?.workings,e),complaint:n?.complaint,is_old:o}}function O_(e,t){let n=e?.get(t);return n?[n]:[...e?.values()??[]].filter(({of:o})=>o.startsWith(`${t}.`))}async function F_(){let{plan:e,planned:t}=a;if(!(!e||!t)){oa=!0;try{let{how:n}=await Kl(t);f({explanation:{of:e,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof b))throw n;f({explanation:{of:e,workings:new Map,complaint:n.message}})}finally{oa=!1}}}function k({key:e,label:t,shown:n,of:o,working:i,size:s="plain",note:l}){let d=a.open.has(e),c=`sum-${e.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure">
    <button
      type="button"
      class="line"
      aria-expanded=${d?"true":"false"}
      aria-controls=${d?c:u}
      @click=${()=>Ot("open",e)}
    >
      <span class="name">${t}${l?r`<small>${l}</small>`:u}</span>
      <span class="value ${s} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${d?"\u2013":"="}</span>
    </button>
    ${d?r`<div class="sum" id=${c}>${i?Sc(i):C_(o)}</div>`:u}
  </div>`}var hn=(e,t,n)=>k({key:e,label:t,shown:["",""],of:n});function C_(e){let{workings:t,complaint:n,is_old:o}=Tc(e);return t.length?r`<div class=${o?"old":""}>${t.map(Sc)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function Sc({formula:e,with:t,sum:n,rounded:o,comes_to:i,sources:s}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${e}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.map(({name:d,value:c,from:h})=>r`<tr>
              <th scope="row">${d}</th>
              <td>${c}</td>
              <td>${h??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?r`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:u}
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var gn="/pipe/beads",xt=`${gn}/tip`,L_={of:"run",at:xt},pt={at:`${gn}/moves`,in_order:!0},ia="\0own",Ac={tip:"",bead_to_opening:"",moves:[]},tt=(e,t)=>({name:e,label:t,kind:"length"}),Rc={name:"count",label:"How many",kind:"count"},Pc=tt("circle_radius","Radius of their circle"),sa={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[tt("diameter","Diameter"),tt("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[tt("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},tt("start_radius","Radius at the start"),tt("end_radius","Radius at the end"),tt("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[tt("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Rc,Pc,tt("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Rc,Pc,tt("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[tt("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function Mc(e){return r`${I_()} ${ra()?Lc(L_):j_()}
    ${p({label:"Bead \xF7 tip opening",at:`${gn}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${S(pt).map((t,n)=>q_(t,n,e))}</div>
    ${G_()}`}var ra=()=>typeof g("run",xt)=="object",Oc=()=>String(g("run",`${gn}/own_tips`)??g("studio","/own_tips")??"");function E_(){let e=Oc(),t=e?Or(e):[];return g("run",`${gn}/own_tips`)===void 0?[...t,...Mr()]:t}function I_(){let e=n=>n===ia?C("run","a tip of your own",xt,{name:"",round:{radius:""}},Cc):B("run",xt,n),t=E_().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${be({label:"Tip",at:xt,answers:[...t,[ia,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:ra()?ia:void 0})}
  ${ra()?u:P({name:"tips",pointers:[`${gn}/own_tips`],summary:"Tips of a file of your own",body:()=>p({label:"File of tips",at:`${gn}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var Fc=jt("run",xt,"own"),Cc=Io(Fc);async function B_(){let e=g("run",xt);if(!await cr())return;let t=pe("own_tips","/tips"),n=W_(String(e.name).trim()||"My tip",t);Mn([["own_tips",o=>F(o,`/tips/${t.length}`,{...e,name:n})],["run",o=>F(o,xt,n)]]),U(`${n} kept in ${a.beside.own_tips.file}`)}function W_(e,t){for(let n=1;;++n){let o=n===1?e:`${e} ${n}`;if(![...t,...Mr()].some(i=>i.name===o))return o}}function j_(){let e=M("run",xt),t=Oc();if(!e||!t||!Or(t).some(o=>o.name===e))return u;let n=pe("own_tips","/tips").findIndex(o=>o.name===e);return n<0?r`<button type="button" @click=${()=>{cr()}}>Change this tip of my own</button>`:Lc({of:"own_tips",at:`/tips/${n}`})}var Dc=[["round","Round"],["star","Star"],["outline","Another outline"]],ss={x:"",y:""},N_={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[ss,ss,ss]};function Lc({of:e,at:t}){let n=Dc.map(([s])=>s),o=n.find(s=>g(e,`${t}/${s}`)!==void 0),i=s=>({...K(e,t,n),[s]:N_[s]});return r`<div class="part" id=${Fc} role="group" aria-label="My own tip">
    ${I(e,t)} ${H_({of:e,at:t})}
    ${v({of:e,question:"Opening of the tip",at:t,is_told_elsewhere:!0,chosen:o,answers:Dc,puts:i})}
    ${o?z_({of:e,at:t},o):u}
    ${P({of:e,name:"hand",pointers:[`${t}/hand`,`${t}/note`],summary:"Correction for your hand",body:()=>U_({of:e,at:t})})}
    ${e==="run"?r`<button type="button" @click=${()=>{B_()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var H_=({of:e,at:t})=>e==="run"?p({label:"What you call the tip",at:`${t}/name`}):r`<p class="part-title">${M(e,`${t}/name`)}</p>`;function U_({of:e,at:t}){let n=`${t}/hand`,o=i=>g(e,i)!==void 0;return r`<div class="row">
      ${p({of:e,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?p({of:e,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button type="button" @click=${()=>C(e,"correction removed",n,void 0,Cc)}>
            Leave the correction out
          </button>`:u}
    ${p({of:e,label:"Note on the tip",at:`${t}/note`,optional:!0})}`}function z_(e,t){if(t==="outline")return J_(e);let{of:n,at:o}=e,i=(s,l)=>p({of:n,label:l,at:`${o}/${t}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${t==="round"?i("radius","Radius of the opening"):r`${p({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function J_({of:e,at:t}){let n={of:e,at:`${t}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${S(n).map((o,i)=>r`<div class="row" id=${N(n,i)}>
          ${p({of:e,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${p({of:e,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${V(n,i,`corner ${i+1}`)}
        </div>`)}
    ${J(n,"One more corner",()=>z(n,ss,"corner"))}`}function q_(e,t,n){let o=sa[String(e.move)],i=`${pt.at}/${t}`,s=`${t+1}. ${o?.words??String(e.move)}`;return r`<div class="part" id=${N(pt,t)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${V(pt,t,s)}
    </div>
    ${I("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>V_(i,l))}
      ${p({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${K_(t,n)}
  </div>`}function V_(e,{name:t,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return p({label:n,at:`${e}/${t}`,unit:l,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function K_(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==S(pt).length)return u;let i=o.length_mm>0?`${T(o.length_mm/10,1)} cm of bead`:"";return k({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:me(a.units,o.volume_ml),of:`pipe.visible_by.moves.${e}.volume_ml`})}function G_(){let e=o=>({move:o,...Object.fromEntries(sa[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=ne("run",pt.at),n=he("run",pt.at);return S(pt).length||Ce("run",pt.at,t,"What the tip does"),r`${Le(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:u}
    >
      ${Object.entries(sa).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>z(pt,e(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var ye=()=>a.beside.studio!==void 0,Ho=({run:e})=>g("run",e),aa=({studio:e})=>g("studio",e);function Uo(e){return Ho(e)===void 0&&ye()?{of:"studio",at:e.studio}:{of:"run",at:e.run}}var _n=e=>Ho(e)??aa(e),ve=(e,t)=>p({...t,...Uo(e)}),la=e=>e===void 0||e===""||e!==null&&typeof e=="object"&&!Object.keys(e).length;function zo(e,t=""){return e===void 0||la(e)?[]:e===null||typeof e!="object"||Array.isArray(e)?[[t,e]]:Object.entries(e).flatMap(([n,o])=>zo(o,`${t}/${ke(n)}`))}function Y_(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/")))_(e,n)!==void 0&&la(_(e,n))&&(e=F(e,n,void 0));return e}var Ic=(e,t)=>t.reduce((n,o)=>Y_(F(n,o,void 0),o),e);function Bc(e){let t=new Map;return e.flatMap(n=>zo(Ho(n)).flatMap(([o,i])=>{let s=n.studio+o,l=t.get(s)??g("studio",s);return la(l)||String(l).startsWith("?")||l===i?(t.set(s,i),[[n.run+o,s,i]]):[]}))}async function ua(e){ye()||await Ou();let t=Bc(e);Mn([["studio",n=>t.reduce((o,[,i,s])=>F(o,i,s),n)],["run",n=>Ic(n,t.map(([o])=>o))]]),U("Kept in the studio")}function Q_(e){let t=e.flatMap(o=>zo(aa(o)).map(([i,s])=>[o.run+i,s]));Mn([["run",o=>t.reduce((i,[s,l])=>_(i,s)===void 0?F(i,s,l):i,o)]]),U("Said in this run only")}function Z_(e){let t=e.flatMap(n=>zo(Ho(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Mn([["run",n=>Ic(n,t)]]),U("Taken from the studio again")}var Ec=e=>zo(e).length>0;function Zn(e,t){if(!ye())return u;let n=t.some(s=>Ec(Ho(s))),o=t.some(s=>Ec(aa(s))),i=(s,l)=>r`<button type="button" aria-label="${e}: ${s}" @click=${l}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&Bc(t).length?i("Keep in my studio",()=>{ua(t)}):u}
    ${n&&o?i("As in the studio",()=>Z_(t)):u}
    ${!n&&o?i("Otherwise in this run",()=>Q_(t)):u}
  </span>`}function da(e){let t=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return t.find(o=>Pe(o,n)===Pe(e,n))??e}var Jo=()=>Object.keys(g("studio","/cups")??{}),qo=()=>Jo().length===1?{net:""}:Jo().length?{cup:"",net:""}:{holds:"",net:""},Wc="\0another";function Vo(e,t="Cup holds"){let n=`${e}/holds`,o=Jo();if(g("run",n)!==void 0||!o.length)return r`${p({label:t,at:n,unit:"ml",short:!0})}${o.length?X_(e):u}`;let i=l=>l===Wc?C("run","Another cup",e,{...ca(e),holds:""},ge("run",n)):C("run",`Cup: ${l}`,e,{...ca(e),cup:l}),s=l=>M("studio",`/cups/${ke(l)}`);return be({label:"Which cup",at:`${e}/cup`,answers:[...o.map(l=>[l,`${l}, ${s(l)}`]),[Wc,"Another cup"]],unsaid:"choose ...",chosen:M("run",`${e}/cup`)||(o.length===1?o[0]:""),take:i})}function ca(e){let{cup:t,holds:n,...o}=g("run",e)??{};return o}var X_=e=>r`<button type="button" @click=${()=>C("run","A cup of the studio",e,ca(e))}>
    A cup of my studio
  </button>`;function Nc(){return ye()?r`<div class="row">
    ${Jo().map(e=>p({of:"studio",label:`${e} holds`,at:`/cups/${ke(e)}`,unit:"ml",short:!0,optional:!0}))}
    ${e$()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function e$(){let e=()=>{let t=document.getElementById("new-cup"),n=t.value.trim()||jc();t.value="",C("studio",`${n} added`,`/cups/${ke(n)}`,"",ge("studio",`/cups/${ke(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${jc()} />
    </div>
    <button type="button" @click=${e}>Add the cup</button>`}function jc(){for(let e=1;;++e){let t=e===1?"weigh-cup":`weigh-cup ${e}`;if(!Jo().includes(t))return t}}var t$=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]),pa=e=>({run:`/${e}/temperatures`,studio:`/temperatures/${e}`});function rs(e){let{run:t}=pa(e);return P({name:t,pointers:[t],summary:"How warm",body:()=>r` <p class="hint">
          ${ye()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${Zn("How warm",[pa(e)])} ${I("run",t)} ${n$(e)}`})}function n$(e){let{run:t,studio:n}=pa(e),o=d=>({run:`${t}/${d}`,studio:`${n}/${d}`}),i=a.units==="us"?"\xB0F":"\xB0C",s=(d,c,h=i)=>ve(o(d),{label:c,unit:h,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${be({label:"The lye cools in",...Uo(l),answers:t$,unsaid:"not given",optional:!0})}
  </div>`}var Ee=()=>_(a.run.now,"/pipe")!==void 0;function Hc(){let e=t=>{let n=F(t,"/pipe",{formula:"",fills_headspace:"",whip:qo()});return ye()?n:F(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};de("set-up pipe"),Gn("run","Topping added",e,le("lane-pipe"))}function o$(e){let t=Object.keys(_(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",_(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>_(o,i)===void 0?o:F(o,i,void 0),e)}function i$(){Gn("run","Topping removed",o$,le("topping-back"))}function Uc(){let e=a.past.at(-1)?.run?.now;return!e||_(e,"/pipe")===void 0||Ee()?u:r`<button type="button" id="topping-back" @click=${Mi}>Bring the topping back</button>`}function ma(){return r`${c$()} ${rs("pipe")}
    <p class="choice"><button type="button" @click=${i$}>Take the topping away</button></p>`}var s$=["trials","beads","envelope"];function fa(e){return s$.every(t=>g("run",`/pipe/${t}`)===void 0)&&Ce("run","/pipe",`${ne("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${I("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${kt({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:qo()},body:r$})}
      ${kt({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:a$})}
    </div>
    ${kt({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:Ac,body:()=>Mc(e)})}
    ${e?u$(e):u}`}function r$(){let e={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${S(e).map((t,n)=>r`<div class="row" id=${N(e,n)}>
            ${p({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${V(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${J(e,"One more trial",()=>z(e,"","trial"))}
    <div class="row">
      ${p({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${Vo("/pipe/trials/weigh_cup")}
    </div>
    ${I("run","/pipe/trials/weigh_cup")}`}function a$(){let e="/pipe/envelope",t=g("run",`${e}/form`);return r`${v({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${p({label:"Diameter",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${p({label:"Height",at:`${e}/height`,unit:"mm",short:!0})}
      ${p({label:"Share that is soap, not air",at:`${e}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var l$={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function u$(e){let t=e.visible_by;if(!t)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},l)=>k({key:`pipe.by.${i}`,label:l$[i],note:o(l),shown:me(a.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${d$(e)}`}function d$(e){let t=e.visible_by?.suggested_correction;if(!t||a.is_old)return u;let n=T(t.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",s=i&&_(a.run.now,`${o}/correction`)!==t.correction,l=()=>C("run","correction kept",o,{correction:t.correction,trials:t.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function ha(e){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${p({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g"})} ${Vo("/pipe/whip")}
    </div>
    ${I("run","/pipe/whip")}
    ${e?.loads?r`<p class="aside of-plan">${e.loads} bag loads.</p>`:u}`}function c$(){let e="/pipe/pace",t=(n,o,i,s=!1)=>p({label:n,at:`${e}/${o}`,unit:i,optional:s,short:!0});return P({name:"pace",pointers:[e],summary:"Piping speed",body:()=>kt({at:e,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${t("Can be piped for","open_time","min")} ${t("To pipe one","time_per_piece","s")}
            ${t("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function p$(e,{at:t,figure:n}){let o=_(e,t),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function as(e,t,n){return t?r`<button type="button" @click=${()=>n(t.at,p$(e,t))}>It is really so: keep it</button>`:u}var zc=e=>[...a.files?.runs??[],...a.files?.formulas??[]].find(t=>t.file===e)?.name||e;function ls(e){let t=e?.used_by??[];return t.length?r`<p class="aside">Used by ${Nn(t.map(zc))}.</p>`:u}function us(e){let t=e?.used_by??[];return t.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${Nn(t.map(zc))}: a change here changes
    ${t.length===2?"both":`all ${t.length}`}.
  </p>`}function m$({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-e.brim-2*n+i,d=l-s-n,c=[e.left-n,d,e.right-e.left+2*n,-e.floor+n-d],h=(m,$)=>A`<path class="shaded pour" fill-rule="evenodd" d=${$} /><path class="wall ${m}" fill-rule="evenodd" d=${$} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${h("above",vo(t,l))}${h("side",vo(e.loops))}
    </svg>
  </div>`}function Xn(e,t=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!e)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,s=i.pockets[0];return r`${m$(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${R(me(a.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${R(me(a.units,i.total_ml))} together`:u},
      ${R(fe(a.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${R(me(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(l=>r`<li>${l.text}</li>`)}
          </ul>`:u}`}var f$={mm:"in",g:"oz","\xB0C":"\xB0F"},h$={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function ds(e,t,n=""){let o=ga(e);if(o)return o.unit??"";let i=Un(_(D(),e));return h$[t]?.test(i)?i:n||(a.units==="us"?f$[t]??t:t)}var cs=()=>f({typed:void 0}),eo=e=>`d${e.replaceAll("/","-")}`,ga=e=>a.typed?.key===eo(e)?a.typed:void 0,ps=e=>ga(e)?.text??String(_(D(),e)??"");function Ht(e){let{complaint:t}=L();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function _a(e,t,n,o){let{pointer:i}=e,s=l=>{let d=l.target.value,c=e.unit?ds(i,e.unit,e.unit_before):"";f({typed:{key:eo(i),text:d,unit:c}}),ie(i,g$(e,d,c))};return r`<input
    id=${eo(i)}
    .value=${Y(ps(i))}
    @input=${s}
    @blur=${cs}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${t??u}
    aria-invalid=${Ht(i)?"true":"false"}
  />`}function g$(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&qi(t)?`${t.trim()} ${n}`:t}function Ie(e,t){let n=eo(e.pointer),o=Ht(e.pointer),i=_$(e.pointer)??e.hint,s=e.unit?` (${ds(e.pointer,e.unit,e.unit_before)})`:"";return r`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${s}</label> ${_a(e,o||i?`${n}-said`:void 0,t)}
    ${Le(n,o,i)}
  </div>`}function _$(e){let t=_(D(),e),n=ga(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function ms(e){let t=e.toLowerCase(),{file:n,shipped:o}=L().open,i=o?"":n;return a.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===t)?.file}async function Ko(e){let{open:t}=L();try{if(await lt(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await Rt()})}catch(n){if(!(n instanceof b))throw n;return yr(n)}a.run.file&&(Qe(),ee()),e(t.file)}var Tt="/shape/points",Jc=500,Ut=(e,t)=>[Tt,e,...t?[t]:[]].join("/"),qc=e=>Array.from({length:e.least},()=>({}));function Vc(e){let t=Fe(D(),Tt),n=w$(),{complaint:o}=L(),i=o?.field===Tt&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(s=>r`<span
              >${s.label} (${ds(Ut(-1,s.name),s.unit,Kc(e,t.length,s.name))})</span
            >`)}
      </div>
      ${t.map((s,l)=>$$(e,l,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${t.length>=Jc} @click=${()=>hs(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function $$(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=b$(t),s=l=>{let{name:d,label:c,unit:h}=e.columns[l],m={label:c,pointer:Ut(t,d),unit:h,unit_before:Kc(e,t,d)},$=`${c}, ${n.has(t)?o:`point ${t+1}`}`;return _a(m,i?`point-${t}-said`:void 0,y$(e,t,l),$)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>hs(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>Gc(e,t)}>×</button>
    ${i?r`<p id="point-${t}-said" class="complaint">${i}</p>`:u}
  </div>`}function w$(){let e=[...$o(D()),...yi(D())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function b$(e){let{complaint:t}=L();return Ht(Ut(e))??(t?.about===Ut(e)?t.line:void 0)}function Kc(e,t,n){let o=(i,s)=>Un(_(D(),Ut(i,s)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function fs(e,t){queueMicrotask(()=>document.getElementById(eo(Ut(e,t)))?.focus())}function hs(e,t){let n=[...Fe(D(),Tt)];n.length>=Jc||(n.splice(t,0,{}),cs(),ie(Tt,n),fs(t,e.columns[0].name))}function Gc(e,t,n=0){let o=Fe(D(),Tt).filter((i,s)=>s!==t);cs(),ie(Tt,o.length?o:[{}]),fs(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function y$(e,t,n){let[o,i]=e.columns.map(({name:s})=>s);return s=>{let l=!ps(Ut(t,o))&&!ps(Ut(t,i));if(s.key==="Enter"&&s.shiftKey)hs(e,t+1);else if(s.key==="Enter"&&n===0)fs(t,i);else if(s.key==="Enter"&&t+1<Fe(D(),Tt).length)fs(t+1,o);else if(s.key==="Enter")hs(e,t+1);else if(s.key==="Backspace"&&l&&Fe(D(),Tt).length>1)Gc(e,t,t>0?1:0);else return;s.preventDefault()}}var $a={weighings:[""]},wa=/\.(3mf|gltf|glb)$/i;function gs(e){let t=Mt(e);return t?{kind:e,points:qc(t)}:{kind:e}}var v$=()=>ie("/water",$a),mt=e=>Ge(D(),e),Go=()=>_o(D());function Yc(e){let{open:t,answer:n,is_old:o}=L();return r`${qn(t,()=>{Ko(e)})} ${Vn(t)}
    ${t.shipped?u:us(a.files?.moulds.find(i=>i.file===t.file))}
    ${mt("shape")&&mt("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${mt("shape")?_e("Shape",Go(),Object.entries(iu),k$):u}
    <div class="beside ${Mt(Go())?"rows":""}">
      <div>
        ${ba()} ${mt("shape")?T$():u} ${mt("mesh")?S$():u}
        ${ya()} ${mt("water")?P$():u} ${A$()}
      </div>
      <div class="stays">${Xn(n,o,Zc())} ${M$(e)}</div>
    </div>`}function k$(e){let t={...L().shapes,[Go()]:D().shape};w(L(),{shapes:t,answer:void 0}),ie("/shape",t[e]??gs(e))}function x$(){let{shipped:e,file:t}=L().open;return e?a.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function ba(){let e=x$();return Ie({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function T$(){let e=Go(),t=Mt(e);return r`${Sn(e).length?r`<div class="row">
          ${Sn(e).map(n=>Ie({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${t?Vc(t):u}`}function ya(e=nr(D())){return r`<div class="row">
      ${e?u:Ie({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${Ie({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${Ie({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${Ie({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var va=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],ka=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function S$(){let e=o=>String(_(D(),`/mesh/${o}`)??""),t=(o,i,s)=>{let l=Ht(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${_e(o,e(i),s,d=>ie(`/mesh/${i}`,d||void 0))}
      ${l?r`<p class="complaint">${l}</p>`:u}`},n=Ht("/mesh/file");return r`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${wa.test(e("file"))&&!e("unit")?u:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",va)} ${t("Which way is up","up",ka)}
    ${e("role")==="body"?R$():u}
    <div class="row">
      ${Ie({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${Ie({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function R$(){let e=_(D(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${_e("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>ie("/mesh/on_board",t==="yes"?!0:void 0))}`}function P$(){let e=_(D(),"/water/filled_to"),t=e===void 0?void 0:e==="brim"?"brim":_(e,"/depth")!==void 0?"depth":"below_brim",n=s=>ie("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=_(D(),"/water/weighed_in"),i=t===void 0||t==="brim"?Ht("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${Ie({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${_e("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${t==="depth"?Ie({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${t==="below_brim"?Ie({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${_e("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>ie("/water/weighed_in",s))}
    <div class="row">
      ${Fe(D(),"/water/weighings").map((s,l)=>Ie({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},D$(l)))}
    </div>
    ${L().complaint?.field==="/water/weighings"?r`<p class="complaint">${L().complaint.line}</p>`:u}
    <button type="button" @click=${Qc}>One more round</button>`}function Qc(){let e=Fe(D(),"/water/weighings").length;ie(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var D$=e=>t=>{t.key==="Enter"&&(e+1===Fe(D(),"/water/weighings").length?Qc():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function A$(){let e=(t,n)=>r`<button type="button" @click=${n}>${t}</button>`;return r`<div class="choice">
    ${mt("shape")?u:e("Add measures, as a check",()=>ie("/shape",gs("block")))}
    ${mt("shape")&&mt("mesh")?e("Leave the measures out",()=>ie("/shape",void 0)):u}
    ${mt("water")?e("Leave the water out",()=>ie("/water",void 0)):e("Add weighed water",v$)}
  </div>`}function Zc(){let e=yi(D()).length;return e?[...wo(D()),e===1?"the other number of a point":`the other numbers of ${e} points`]:wo(D())}function M$(e){let t=String(D().name??"").trim(),n=ms(t),{open:o,answer:i,is_old:s,complaint:l}=L(),d=i&&!s&&!l&&!Zc().length&&t&&!n,c=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{Ko(e)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?r`<p class="aside">It stays in ${c}.</p>`:u}
    ${t?u:r`<p class="hint">Give it a name first.</p>`} ${xa(t,n)}
    ${l?r`<p class="alarm" role="status">${O$(l.field)}${l.line}</p>
            ${as(D(),l.keep,ie)}`:u}`}var xa=(e,t)=>t?r`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:u;function O$(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=Sn(Go()).find(({name:s})=>e===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var F$=200*2**20;async function Xc(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:t}),ie("/name",e.name.replace(/\.\w+$/,"")),e.size>F$){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return w(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await eu(e,o=>w(t,{share:o}));w(t,{share:1,upload:n.file}),await tp(t)}catch(n){w(t,{complaint:n instanceof b?n.message:String(n)})}}async function tp(e){let t=e.questions+1;w(e,{questions:t,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=e;try{let l=await Cn({file:n,unit:o,role:i,up:s});t===e.questions&&w(e,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof b))throw l;if(t!==e.questions)return;let d=o?e.sizes:I$(l.complaint),c=d.length&&!o?void 0:Me(l.complaint);w(e,{sizes:d,complaint:c,is_measuring:!1})}}async function C$(e){let{questions:t,upload:n,unit:o,up:i}=e;try{let s=await Gl({file:n,unit:o,up:i});t===e.questions&&w(e,{inspection:s})}catch(s){if(!(s instanceof b))throw s;t===e.questions&&w(e,{complaint:Me(s.complaint)})}}function L$(e){return e.inspection?r`<h4>Every defect of the mesh</h4>
    ${e.inspection.defects.length?r`<ul>
            ${e.inspection.defects.map(E$)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{C$(e)}}>List every defect of the mesh</button>`}var E$=({text:e})=>r`<li>${e}</li>`;function I$({asks:e,choices:t=[]}){if(e!=="unit")return[];let n=o=>(o??[]).map(i=>T(i,2)).join(" \xD7 ");return t.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function Ta(e,t){w(e,t),tp(e)}function np(e,t){let n=l=>{let d=l.target;Xc(d.files?.[0]),d.value=""},o=l=>{l.preventDefault(),Xc(l.dataTransfer?.files[0])},[i,s]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${a.mesh?B$(a.mesh,e,t):u}`}function B$(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,l])=>[s,l?`${s}: ${l} ${s}`:s]);return r` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?r`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:u}
    ${e.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${e.upload&&!wa.test(e.name)?r`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${_e("Unit of the file's numbers",e.unit,i,s=>Ta(e,{unit:s}))}`:u}
    ${e.complaint?r`<p class="alarm" role="alert">${e.complaint}</p>`:u}
    ${e.upload&&!e.is_measuring&&(e.complaint||e.answer)?L$(e):u}
    ${e.upload&&(e.unit||e.answer)?r`<h4>What it shows</h4>
            ${_e("Role",e.role??e.answer?.gauge.role,va,s=>Ta(e,{role:s}))}
            <h4>Which way is up</h4>
            ${_e("Up",e.up??"",ka,s=>Ta(e,{up:s||void 0}))}`:u}
    ${e.answer?r`${Xn(e.answer)} ${W$(e,t,n)}`:u}`}var op=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function W$(e,t,n){let o=String(D().name??"").trim(),i=ms(o),s=o&&!i&&!e.is_keeping;return r`${ba()} ${ya(op(e))} ${xa(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>ep(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>ep(e,n)}>More settings</button>
    </div>
    ${e.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function ep(e,t,n){w(e,{is_keeping:!0});try{let o=j$(e,await tu(e.upload,H$(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await N$(o))return t(o);Ln(o,"mesh",L().title),await Ko(n),w(e,{complaint:a.mould?.complaint?.line})}catch(o){w(e,{complaint:o instanceof b?o.message:String(o)})}w(e,{is_keeping:!1})}function j$(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=D();return{...i,...op(e)||o===void 0?{}:{cavities:o},mesh:n}}async function N$(e){try{return await st({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof b&&t.status===422)return!1;throw t}}var H$=e=>Tn(e.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var _s={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},ip={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function sp(e){Lt();let t={...ip,shape:gs("block")};e==="mesh"?Ln(ip,"mesh",_s[e]):Ln(e==="water"?{...t,water:$a}:t,"form",_s[e]),ws()}async function rp(e,t){Lt(),await Uu(e,t),ws()}async function $s(e){Lt(),await zu(e),ws()}function U$(e){Ln(e,"form","More about this mould"),ws()}function ws(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function ap(e){if(!a.mould)return;let{way:t,title:n}=a.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?np(e,U$):Yc(e)}
  </section>`}var Sa=()=>f({chosen_mould:void 0});function Yo(e,t){let n=a.files?.moulds.find(s=>s.file===e),o=a.catalogue.find(s=>s.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,owned:1,told:t};f({chosen_mould:i}),z$(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function z$(e){try{let[t,n]=await Promise.all([Cn({file:e.file}),X(e.file)]);w(e,{answer:t,owned:e.shipped?1:Number(q(n.text)?.owned??1)})}catch(t){w(e,{complaint:t instanceof b?t.message:String(t)})}}var J$=e=>a.files?.moulds.find(t=>t.file===e);function lp(e,t){let n=()=>t(async()=>{await rp(e.file,e.shipped),Sa()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"built-in":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?r`<p role="status">${e.told}</p>`:u} ${e.note?r`<p>${e.note}</p>`:u}
    ${ls(J$(e.file))}
    ${e.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${e.answer?Xn(e.answer):e.complaint?u:r`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?u:q$(e,t)}
    </div>
  </section>`}async function up({name:e,mould:t,formula:n}){let o=a.files?.moulds.some(d=>d.file===t&&!d.shipped),[i,s]=await Promise.all([st({file:t}),o?X(t):void 0]),l=Number(q(s?.text??"")?.owned??1);await Cr({name:e,mould:t,formula:n,...dp(i,l)})}function q$(e,t){let n=o=>()=>t(()=>Cr({mould:e.file,name:e.name,formula:o,...dp(e.answer.gauge,e.owned)}));return r`<div>
    <h3>Make a run with it: which base?</h3>
    <ul class="cards">
      ${(a.files?.formulas??[]).map(o=>r`<li>
            <button type="button" ?disabled=${!e.answer} @click=${n(o.file)}>
              <b>${o.name}</b><span>${o.note||o.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function dp(e,t){let n=e.pockets[0];return{cavities:e.pockets.length*t,deep_mm:n.brim_mm-n.floor_mm}}var $n={pour:"base",pipe:"topping",apart:"formula"},V$=[...Ro,...Po,...Object.values($n),"describing","chosen"];function Qo(){let{view:e,run:t,formula_of:n,formulas:o,mould:i,chosen_mould:s}=a;if(e!=="reading")return ut(e)?{name:e,file:t.file,of:t}:e==="moulds"&&i?{name:"describing",file:i.open.id,of:i}:e==="moulds"&&s?{name:"chosen",file:s.file,of:s}:e!=="formula"?{name:e}:n==="apart"?{name:"formula",file:o.apart?.file,of:o.apart}:{name:$n[n],file:t.file,of:t}}var ft=({name:e,file:t})=>`#${e}${t?`/${t.split("/").map(encodeURIComponent).join("/")}`:""}`;function Ra(e){let[t,...n]=e.slice(1).split("/");if(V$.includes(t))try{return{name:t,file:n.map(decodeURIComponent).join("/")||void 0}}catch{return}}function pp(e){if(!e)return{};let t=e.name;return ut(t)?{run:e.file,view:t}:{run:e.name===$n.pour||e.name===$n.pipe?e.file:void 0,view:Ne(t)?t:"reading"}}async function mp({name:e,file:t}){if(!(!(e===$n.apart&&a.formulas.apart?.file===t)&&!await Lr()))try{await K$(e,t)}catch(o){if(!(o instanceof b||o instanceof SyntaxError))throw o;f({view:"runs",list_complaint:o.message})}}async function K$(e,t=""){let n=e;if(ut(n))return cp(t,n);let o=["pour","pipe"].find(i=>$n[i]===e);if(o)return await cp(t,"formula"),He(o);if(e===$n.apart)return Fo(t);await G$(e,t)}async function cp(e,t){e===a.run.file||!e?f({view:a.run.file?t:"runs",typed:void 0}):await It(e,t)}async function G$(e,t){let n=e;Sa(),Lt(),f({view:Ne(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,fault:void 0});let o=Pi(Se).find(i=>i.id===t);e==="describing"&&o&&await $s(o),e==="chosen"&&Yo(t),Y$()}async function Y$(){try{f({files:await Rt()}),ji()}catch(e){if(!(e instanceof b))throw e;f({list_complaint:e.message})}}var Be={id:""},$e,Pa=!1,Aa=new Map,bs=JSON.parse(sessionStorage.getItem("left")??"{}");function hp(){let e=Qo();Pa||!e||$e&&ft($e)===ft(e)||(ys(),gp(e))}function gp(e){let t=!$e||$e.name===e.name&&$e.of!==void 0&&$e.of===e.of;if($e=e,t)return to();Be={id:crypto.randomUUID(),before:location.hash},Aa.set(Be.id,e.of),history.pushState(Be,"",ft(e)),requestAnimationFrame(Z$)}function to(){$e&&(Be.id||(Be={id:crypto.randomUUID()}),Aa.set(Be.id,$e.of),history.replaceState(Be,"",ft($e)))}var Q$="button, input, select, summary, a[href], [tabindex]",Da=e=>e.id||(e.getAttribute("aria-label")??e.textContent).trim(),_p=e=>[...document.querySelectorAll(`#main :is(${Q$})`)].filter(t=>Da(t)===e);function ys(){let e=document.activeElement;!e?.closest("#main")||e.id==="main"?bs[Be.id]={scroll:scrollY}:bs[Be.id]={scroll:scrollY,words:Da(e),nth:_p(Da(e)).indexOf(e)}}function Z$(){scrollTo(0,0),document.activeElement?.closest("#main")||$p()}function $p(){let e=document.querySelector("#main h1");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}))}function wp(){let{scroll:e,words:t,nth:n=0}=bs[Be.id]??{scroll:0},o=t===void 0?void 0:_p(t)[n];o?o.focus({preventScroll:!0}):$p(),scrollTo(0,e)}var vs=e=>bp({name:e,file:ut(e)?a.run.file:void 0});async function bp(e){ys(),await Ma(e,()=>{let t=Qo();t&&!($e&&ft($e)===ft(t))&&gp(t)})}async function Ma(e,t){Pa=!0;try{await mp(e)}finally{Pa=!1,t()}}function yp(e){Be.before===ft(e)?history.back():bp(e)}var fp=Promise.resolve();function X$(e,t){ys();let n=()=>history.state?.id!==e?.id;fp=fp.then(async()=>{if(!t)return to();if(n())return;let o=e?Aa.get(e.id):void 0,i=[a.run,a.formulas.apart].find(s=>s&&s===o);await Ma(i?{...t,file:i.file}:t,()=>{$e=Qo(),!n()&&(Be=e??{id:crypto.randomUUID()},to(),requestAnimationFrame(wp))})})}function vp(){history.scrollRestoration="manual",addEventListener("popstate",e=>{El()||X$(e.state,Ra(location.hash))}),addEventListener("pagehide",()=>{ys(),sessionStorage.setItem("left",JSON.stringify(bs))})}async function kp(){let e=Ra(location.hash);e&&(Be=history.state??{id:""}),await Md(pp(e)),e&&ew(e)&&await Ma(e,()=>{$e=Qo(),to(),requestAnimationFrame(wp)}),await Od()}var ew=e=>!$e||ft($e)===ft(e);function ks(){let e=os()?void 0:a.complaint;return r`<div class="complaints" role="status">
      ${e?r`<p class="alarm">
                <strong>${a.plan?"The figures below are out of date.":"No figures yet."}</strong>
                ${Oa(e.field)}${Me(e)}
              </p>
              ${e.is_fault?r`<button type="button" @click=${Fa}>Ask again</button>`:u}
              ${yt("run")?as(a.run.now,e.keep,(t,n)=>B("run",t,n)):u}
              ${tw()?r`<button type="button" @click=${ow}>Go to the field</button>`:u}`:u}
    </div>
    ${No()}`}function Oa(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function Fa(){ee(),a.run.failed&&Ze()}function tw(){if(xp())return!0;let e=fn();return e?document.activeElement!==e:nw()}var nw=()=>a.view!=="set-up"&&yt("run")&&a.complaint!==void 0&&a.complaint.field!=="",xp=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&yt(e));function ow(){let e=fn(),t=xp();if(e)return Yi(e);t?He(t):vs("set-up"),iw(()=>Yi(fn()))}function iw(e){requestAnimationFrame(()=>requestAnimationFrame(e))}var Tp=()=>[...Li().map(e=>qn(e)),...Ci().map(Vn)];function Sp(){let e=a.formula_of,t=a.formulas[e];if(!t)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Tp()}${ks()}
      <p>Reading the formula ...</p>
      ${La(e)}`;let n=a.plan&&Bt(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return r`${Tp()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"Unnamed formula")}</h1>
    <p class="aside">${sw(e)}</p>
    <div class="choice">${La(e)}${e==="apart"?rw():u}</div>
    ${us(a.files?.formulas.find(i=>i.file===t.file))} ${aw(e,o,n)} ${Pp(e)}
    ${Qr(e)} ${Zr(e,o)} ${ea(e)} ${zr(e)}
    <div class="choice">${La(e)}</div>`}var Rp=e=>[Pp(e),Qr(e),Zr(e,void 0),ea(e),zr(e)],Ca=()=>String(a.run.now.name??a.run.file);function sw(e){let t=a.formulas[e],n=t.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`Opened on its own; the figures are for a base of "${Ca()}".${n}`:o?`Base and topping of "${Ca()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${Ca()}".${n}`}function La(e){let t=e==="apart";return r`<button type="button" class="strong" @click=${()=>yp(t?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${t?"Close the formula":"Back to the run"}
  </button>`}function rw(){return r`<button type="button" @click=${()=>{Er("pour")}}>Use it as the base</button> ${Ee()?r`<button type="button" @click=${()=>{Er("pipe")}}>Use it as the topping</button>`:u}`}function aw(e,t,n){return r`<section class="strip" aria-label="What comes of it">
    ${t&&n?r`<dl>
            ${[...lw(e,n),...uw(e,t)].map(([o,i,s])=>r`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${s?Nd(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${dw(e)}
  </section>`}function lw(e,t){let n=e==="pipe"?Br(t,t.whippings[0]):"";return n?[["For one whipping",n]]:te(t.whole)?[["For one batch",et(t.whole,t.batch)]]:[]}function uw(e,t){let n=dt(e).length?" \u26A0":"";return[["Fats",R(O(a.units,t.fats_g))],["Superfat as weighed",`${Ue(t.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...Jn(t).map(({one:o})=>[o.name,R(bt(a.units,o))])]}function dw(e){let t=os()?void 0:a.complaint;if(!t)return r`<div role="status"></div>
      ${No()}`;let n=yt(e),o=n&&t.field!==""&&document.activeElement!==fn();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${Oa(t.field)}${Me(t)}
      </p>
      ${t.is_fault?r`<button type="button" @click=${Fa}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>fn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${No()}`}function Pp(e){return r`<section class="card" aria-label="Name">
    ${p({label:"Name",of:e,at:"/name",wide:!0})}
    ${P({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>p({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Zo=[],Xo=()=>Zo.at(-1);function Ea(e){Zo=[...Zo,e],f({list_told:e.words}),U(e.words)}async function Mp(){let e=Xo();e&&(await e.undo(),Zo=Zo.slice(0,-1),f({list_told:""}),U("Undone"),await no())}var no=async()=>f({files:await Rt()});async function Op(e,t){let{$schema:n,...o}=JSON.parse((await X(t.file)).text),i=`${t.name||t.file}, copy`,s={...o,name:i,...e.name==="run"?{id:crypto.randomUUID()}:{}},{file:l}=await at({kind:e,name:e.new_name(bo(e,s)),text:Q(s),from:t.file});return await no(),Ea({words:`Copied ${t.name||t.file}.`,undo:async()=>{await Ks(l,!0)}}),l}var Fp=e=>/(\.(run|formula))?\.json$/.exec(e)?.[0]??"",ei=e=>Oe(e).slice(0,-Fp(e).length||void 0),Cp=(e,t)=>Te(e)+t+Fp(e),Dp=e=>[a.run,...Z.map(t=>a.formulas[t])].find(t=>t?.file===e);async function Lp(e,t,n){let o={name:t.name,note:t.note,stem:ei(t.file)};await Ap(e,t.file,n),await no();let i=Cp(t.file,n.stem);Ea({words:`Changed ${n.name||i}.`,undo:()=>Ap(e,i,o)})}async function Ap(e,t,{name:n,note:o,stem:i}){let s=Dp(t),l=s??await Re(e,t),{note:d,...c}=l.now,h=o?{...c,name:n,note:o}:{...c,name:n};if(Q(h)!==Q(l.now)&&(s&&Ft(),ce(l,h),await lt(l),l.theirs))throw new Error(`${t} was changed outside this page just now. Look at it again.`);let m=Cp(t,i);if(m===t)return;let{renamed_in:$}=await Ul(t,m);s&&yu(s,m);for(let y of $){let x=Dp(y);x&&await vu(x)}}async function Ep(e,t){let{removed:n}=await Ks(e.file,t);a.run.file===e.file&&Si(),await no(),Ea({words:`Removed ${e.name||e.file}.`,undo:async()=>{await zl(n)}})}async function De(e){f({list_complaint:""});try{await e()}catch(t){f({list_complaint:t instanceof Error?t.message:String(t)}),t instanceof b&&await no().catch(()=>{})}}var Ia=()=>{De(Mp)};function oo(e){return r`<h1 tabindex="-1">${e}</h1>
    ${a.list_complaint?r`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&Xo()?r`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${Ia}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(t=>r`<p class="alarm">
          More lies in ${t.folder} than is looked at: ${t.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Ip=new Map,Bp=Promise.resolve();function Wp(e,t=""){let n=`${e}
${t}`,o=Ip.get(n);return o||(o=Bp.then(()=>cw(e)),Bp=o,Ip.set(n,o)),o}async function cw(e){try{let t=await Pt({kind:"glb",gauge:{file:e}}),n=Fn(await t.arrayBuffer());return ko(n.find(o=>o.name==="cavity")??n[0])}catch(t){if(t instanceof b)return;throw t}}var Ba=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#e=new IntersectionObserver(([t])=>t.isIntersecting&&this.#t(),{rootMargin:"200px"});connectedCallback(){this.#e.observe(this)}disconnectedCallback(){this.#e.disconnect()}attributeChangedCallback(){this.#e.disconnect(),this.isConnected&&this.#e.observe(this)}#t(){this.#e.disconnect();let t=this.getAttribute("file")??"";requestIdleCallback(()=>{Wp(t,this.getAttribute("changed")??"").then(n=>{t===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let t=this.#n;if(!t)return void ot(u,this);let{left:n,right:o,floor:i,brim:s,loops:l}=t,d=.04*Math.max(o-n,s-i),c=[n-d,-s-d,o-n+2*d,s-i+2*d];ot(r`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${vo(l)} />
      </svg>`,this)}};customElements.define("mould-picture",Ba);function io(e){let{one:t,facts:n,picture:o,open:i}=e,s=a.list_open?.file===t.file?a.list_open:void 0,l=t.name||t.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{De(i)}}>
      ${o?r`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${l}</b>${n.length?r`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${t.shipped?"built-in":t.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${s?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>pw(e,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?mw(e,s):u}
  </li>`}function pw({one:e},t){let{file:n,name:o,note:i}=e;f({list_open:t?{file:n,name:o,note:i,stem:ei(n)}:void 0})}function mw(e,t){let{kind:n,one:o}=e,i=r`<button type="button" @click=${()=>{De(()=>hw(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(d=>o[d]===t[d])&&ei(o.file)===t.stem,l=()=>{De(()=>gw(e,t))};return r`<div class="acts">
    ${ls(o)} ${Wa("Name",t,"name")} ${Wa("Note",t,"note")}
    ${Wa("Name of the file",t,"stem")}
    <div class="choice">
      <button
        type="button"
        class="strong"
        ?disabled=${s||!t.name.trim()||!t.stem.trim()}
        @click=${l}
      >
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{De(()=>jp(o,t,!1))}}>Remove</button>
    </div>
    ${t.used_by?fw(o,t):u}
  </div>`}function Wa(e,t,n){let o=`list-${n}`,i=s=>w(t,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${e}</label>
    <input id=${o} .value=${Y(t[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function fw(e,t){return r`<div role="alert">
    <p class="alarm">${t.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{De(()=>jp(e,t,!0))}}>Remove it even so</button>
  </div>`}async function hw(e,t){let n=await Op(e,t),o=a.files?.[e.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:ei(n)}}),requestAnimationFrame(()=>document.getElementById("list-name")?.select()))}async function gw({kind:e,one:t},{name:n,note:o,stem:i}){await Lp(e,t,{name:n.trim(),note:o.trim(),stem:i.trim()}),f({list_open:void 0})}async function jp(e,t,n){let o=e.used_by??[];if(o.length&&!n)return w(t,{used_by:o});try{await Ep(e,n),f({list_open:void 0})}catch(i){let s=i instanceof b?i.answer.used_by:void 0;if(!s)throw i;w(t,{used_by:s})}}var ja=e=>w(a.new_formula,e);function Np(){let{name:e,copied:t}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>De(async()=>{await i(e.trim()),ja({name:"",copied:""})});return r`${oo("Formulas")}
    <section aria-label="Formulas">
      <ul class="cards">
        ${n.map(_w)}
      </ul>
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${Y(e)}
            @input=${i=>ja({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e.trim()} @click=${o(Fd)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>ja({copied:i.target.value})}
          >
            <option value="" .selected=${Y(t==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${Y(i.file===t)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!e.trim()||!t}
          @click=${o(i=>Cd(t,i))}
        >
          Make the copy
        </button>
      </div>
      ${e.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>`}function _w(e){let t=e.changed?[`changed ${zn(e.changed)}`]:[];return io({kind:Rn,one:e,facts:t,open:()=>Fo(e.file)})}function $w(e){Lt(),Yo(e,`Saved in ${e}.`)}function Up(){let{chosen_mould:e}=a;return r`${oo("Moulds")}
  ${e?lp(e,De):ap($w)??r`${bw()} ${ww()}`}`}function ww(){let e=(a.files?.moulds??[]).filter(t=>!t.shipped);return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    <ul class="cards">
      ${e.map(t=>Hp(t,kw(t.file)))}${a.catalogue.map(t=>Hp({file:t.path,name:t.name,note:"",shipped:!0},[`${R(me(a.units,t.brimful_ml))}, ${ae(t.cavities,"cavity","cavities")}; ${t.description}`]))}
    </ul>
  </section>`}var Hp=(e,t)=>io({kind:Se,one:e,facts:t,picture:e.file,open:()=>Promise.resolve(Yo(e.file))});function bw(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${yw()}
    <div class="choice">
      ${Object.entries(_s).map(([e,t])=>r`<button type="button" @click=${()=>sp(e)}>${t}</button>`)}
    </div>
  </section>`}function yw(){return Pi(Se).map(e=>{let t=String(q(e.text)?.name??"").trim()||vw(e)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${t}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>De(()=>$s(e))}>Continue</button>
        <button type="button" @click=${()=>{an(Se,e.id),Ke()}}>Discard it</button>
      </div>
    </div>`})}var vw=({file:e})=>a.files?.moulds.find(t=>t.file===e)?.name;function kw(e){let t=cd(e);return t?"complaint"in t?[`it cannot be measured: ${t.complaint}`]:[R(me(a.units,t.brimful_ml)),ae(t.cavities,"cavity","cavities")]:["measuring ..."]}function zp(){let e=xw();if(e)return e;let{run:t}=a,n=a.formula_of==="apart"||!(W(t)||t.theirs||t.failed);return a.view==="formula"&&n?Tw():t.theirs?xs(`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`):t.failed?xs(`Not saved: ${t.failed}`):W(t)?qp:Na(t.shipped?Jp:`Saved in ${t.file}`)}var Jp="Built-in example: your first change is saved as a copy.",qp={words:"Saving ...",is_kept:!1},Na=e=>({words:e,is_kept:!0}),xs=e=>({words:e,is_kept:!1,is_failed:!0});function xw(){let e=a.formulas.apart?"apart":"run",t=wt(e);if(t)return xs(`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);if((e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&W(o)))return a.complaint?.file===""?xs(`Not saved: ${a.complaint.problem}`):qp}function Tw(){let e=a.formulas[a.formula_of];return Na(e?e.shipped?Jp:`Saved in ${e.file}`:"")}function Ts(){let{view:e,mould:t,past:n,future:o}=a;return e==="moulds"&&t?Vp(t,Ju,qu):Ne(e)?{undo:Xo()&&Ia}:Vp({past:n,future:o},Mi,Su)}var Vp=({past:e,future:t},n,o)=>({undo:e.length?n:void 0,redo:t.length?o:void 0});var Kp={runs:"Runs",formulas:"Formulas",moulds:"Moulds"},Sw={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},Rw="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",Pw="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Ha=e=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${A`<path d=${e} />`}</svg>`;function Gp(){let e=a.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${e?u:r`<nav class="rail-lists" aria-label="Lists">
                ${Ro.map(t=>Yp(t,Kp[t],r`${Kp[t]}`))}
              </nav>
              ${Aw()}`}
    </div>
    ${e?u:Mw()}
  </header>`}var Dw={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`};function Aw(){let e=t=>()=>{f({units:t}),localStorage.setItem("units",t)};return r`<div class="tools units" role="group" aria-label="Units">
    ${["metric","both","us"].map(t=>r`<button type="button" aria-pressed=${a.units===t?"true":"false"} @click=${e(t)}>
          ${Dw[t]}
        </button>`)}
  </div>`}function Mw(){let{undo:e,redo:t}=Ts();return r`<div class="bar">
    ${a.run.file?Ow():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!e} @click=${e}>${Ha(Rw)}<span>Undo</span></button>
      <button type="button" ?disabled=${!t} @click=${t}>${Ha(Pw)}<span>Redo</span></button>
    </div>
    ${a.run.file?Ew():u}
  </div>`}function Ow(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${Po.map(Fw)}</div>
  </nav>`}function Fw(e){let[t,n]=Sw[e],o=Cw(e);return Yp(e,o?`${t}, ${o.words}`:t,r`${Ha(n)}<span>${t}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function Cw(e){if(e==="watch"&&Pd())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(e==="set-up"&&Lw())return{sign:"\u25CB",words:"missing"}}var Lw=()=>a.complaint!==void 0&&!a.complaint.is_fault;function Yp(e,t,n){let o=a.view===e;return r`<button
    type="button"
    aria-label=${t}
    aria-current=${o?"page":u}
    @click=${()=>{vs(e)}}
  >
    ${n}
  </button>`}function Ew(){let{words:e,is_kept:t,is_failed:n}=zp();return r`<p class="saving ${n?"failed":t?"kept":""}" role="status">${e}</p>`}function Zp(e){if(!Bd(e))return u;let{whole:t}=e,{batches:n}=t.pieces,o=te(t)?`${ae(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${Qp(e,"pour","The base, whole run")}
      ${t.pipe?Qp(e,"pipe","The topping, whole run"):u} ${Iw(e)}
    </div>
  </section>`}function Qp(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,s=[...Vi(i),...Jn(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:l,i:d})=>Ss(`${t}.ingredients.${d}.g`,l.name,bt(a.units,l)))}
    ${Ss(`${t}.make_g`,t==="pour"?"Base in all":"Topping in all",O(a.units,i.make_g))}
  </div>`}var Ss=(e,t,n)=>k({key:`needs.${e}`,label:t,shown:n,of:e});function Iw(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((s,l)=>s.colours.map((d,c)=>({layer:s,one:d,i:l,j:c}))),o=t.dust??[];if(!n.length&&!o.length)return u;let i=s=>j(a.units,se(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:l,i:d,j:c})=>Ss(`pour.layers.${d}.colours.${c}.g`,`${l.name}, for ${s.name}`,bt(a.units,l)))}
    ${o.map((s,l)=>Ss(`dust.${l}.g`,s.name,i(s)))}
  </div>`}function Xp(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:l}=e.piece,d=s?"A bar on average, ":"",c=h=>d?d+h.toLowerCase():h;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${k({key:"piece.fresh",label:c("Fresh"),shown:O(a.units,n),of:"piece.fresh_g"})}
      ${o===null?u:k({key:"piece.cured",label:c("Cured"),shown:O(a.units,o),of:"piece.cured_g"})}
      ${s?k({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:O(a.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:k({key:"piece.label",label:"Net weight for the label",shown:O(a.units,i,0),of:"piece.label_g"})}
      ${l?k({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(h=>T(h,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${t&&t.amount!==null?r`${k({key:"piece.cost",label:"Material cost of one piece",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,of:"piece.cost.amount"})}
            ${t.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${Ua(e)}
    </section>
    ${Zp(Bt(e))}`}function Ua(e){let t=e.label;if(!t)return u;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[tm,Ja]=[440,270],[ti,za,Rs,so]=[64,tm-10,10,Ja-52],Bw=6,Ww=8;function em(e){let t=e/Bw,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,s)=>s*o)}var ro=e=>T(e,1);function nm(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=d=>ro(ti+(za-ti)*d/n),s=d=>ro(so-(so-Rs)*d/o),l=e.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${s(c)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${tm} ${Ja}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${em(n).map(d=>A`<path class="grid" d="M${i(d)} ${Rs}V${so}" />
            <text x=${i(d)} y=${so+20} text-anchor="middle">${ro(d)}</text>`)}
      ${em(o).map(d=>A`<path class="grid" d="M${ti} ${s(d)}H${za}" />
            <text x=${ti-8} y=${s(d)} text-anchor="end" dominant-baseline="middle">${ro(d)}</text>`)}
      ${A`<text x=${(ti+za)/2} y=${Ja-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Rs+so)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${l}" />
        <path class="pour-line" d="M${i(t)} ${Rs}V${so}" />`}
    </svg>
    ${jw(e)}`}function jw(e){let t=Math.max(1,Math.round(e.length/Ww)),n=e.filter((o,i)=>(i+1)%t===0);return r`<details>
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
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:s})=>r`<tr>
              <th scope="row">${ro(o)}</th>
              <td>${ro(i)}</td>
              <td>${T(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Ps=Math.PI/8,Nw=500,qa=class extends HTMLElement{#n=[];#e=0;#t;#i=!1;#o=!1;#s="";#r=!1;#a="";#l="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#t?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#n=t,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#t?.end(),this.#t=void 0,this.#a="",URL.revokeObjectURL(this.#s)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#w()},{timeout:1500})}async#w(){if(this.#t||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#t=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let t=this.#t||this.#o;!this.#m||!t||this.#c()===this.#a||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},Nw))}#c(){let{of:t}=this.#n[this.#e],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let t=this.#c();if(t!==this.#a){try{let n=await Pt(JSON.parse(t));if(t!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#t?.show(Fn(await n.arrayBuffer())),this.#a=t,this.#l=""}catch(n){if(!(n instanceof b))throw n;this.#l=n.message}this.#u()}}#_(t){t(),this.#l="Drawing ...",this.#u(),this.#p()}#u(){let t=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#e?"true":"false"}
            @click=${()=>this.#_(()=>this.#e=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#l}</p>`;ot(r`${t} ${this.#o?this.#y():this.#b()} ${n}`,this)}#b(){let t=i=>()=>this.#t?.turn(i),n=i=>()=>this.#t?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#e]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-Ps)}>Turn left</button>
        <button type="button" @click=${t(Ps)}>Turn right</button>
        <button type="button" @click=${n(Ps)}>From above</button>
        <button type="button" @click=${n(-Ps)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#e].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",qa);function om(e){let{measured:t}=a;if(!t)return r`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=t.gauge.pockets[0],o=t.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${k({key:"mould.brimful",label:"To the brim",note:`${R(fe(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:me(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:t.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${nm(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${Hw(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function Hw(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return e.pipe||e.decorations?.length||e.pour.layers?.length?[o,n]:[n,o]}var ao=e=>w(a.printing,e);function im(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function sm(e){if(!a.printing.is_working){ao({is_working:!0,told:"Making it ..."});try{await Uw(),ao({told:await e()})}catch(t){ao({told:t instanceof Error?t.message:String(t)})}ao({is_working:!1})}}async function Uw(){await En();let e=wt("run");if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var zt=(e,t)=>()=>sm(async()=>{let n=URL.createObjectURL(await Pt(t));return im(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),zw=e=>()=>sm(async()=>(im(await Xl(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),Jw=e=>{ao({paper:e}),localStorage.setItem("paper",e)},qw=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function rm(e){let{batch:t}=a.printing;return te(e)&&t<=e.pieces.batches?t:0}function Vw(e){if(!te(e))return u;let t=rm(e),n=i=>ao({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${Y(i===t)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${qw(e).map(({number:i,one:s})=>o(i,`batch ${i} of ${e.pieces.batches}: ${et(e,s)}`))}
      </select>
    </div>
  </div>`}function am(e){let{paper:t,is_working:n,told:o}=a.printing,i=a.run.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),s={file:a.run.file,run:a.run.now},l=a.measured?.mould,d={file:l,"below-brim":`${e.pour.below_brim_mm} mm`},c=rm(e),h={plan:s,paper:t,...c?{batch:String(c)}:{}},m=($,y,x="")=>r`<button type="button" class=${x} ?disabled=${n} @click=${()=>{y()}}>${$}</button>`;return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${_e("Paper",t,[["A4","A4"],["Letter","Letter"]],Jw)}
    ${Vw(e)}
    <div class="choice">
      ${m("Bench sheet, to print",zw({kind:"sheet",...h}),"strong")}
      ${a.files?.makes_pdf?m("Bench sheet, PDF",zt(`${i}${c?` batch ${c}`:""}.pdf`,{kind:"sheet-pdf",...h})):""}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?m("Label draft",zt(`${i} label.txt`,{kind:"label",plan:s})):""}
      ${m("Drawing of the pour, true size",zt(`${i} pour.svg`,{kind:"picture",plan:s}))}
      ${m("Drawing of the piece",zt(`${i}.svg`,{kind:"piece",plan:s}))}
      ${m("Whole piece, GLB (3D viewer)",zt(`${i}.glb`,{kind:"glb",plan:s}))}
      ${m("Whole piece, STL (3D printing)",zt(`${i}.stl`,{kind:"stl",plan:s}))}
      ${l?r`${m("Filled cavity, GLB (3D viewer)",zt(`${i} cavity.glb`,{kind:"glb",gauge:d}))}
            ${m("Cavity, STL (3D printing)",zt(`${i} cavity.stl`,{kind:"stl",gauge:{file:l}}))}`:""}
    </div>
    <p role="status">
      ${o||`The drawing has the pour line ${R(fe(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var lm=e=>am(e);var we={at:"/decorations"},lo=e=>`${we.at}/${e}`,Jt=e=>M("run",`${lo(e)}/name`).trim()||`Decoration ${e+1}`,qe=()=>_(a.run.now,"/cut")!==void 0,Ds=e=>["mould","rod","drizzle"].find(t=>g("run",`${e}/${t}`)!==void 0),ni=e=>["per_piece","per_cast"].find(t=>g("run",`${e}/${t}`)!==void 0);var We="/batch",um=e=>`${e}/moulds_owned`;function Va(){return P({name:"batches",pointers:[We],summary:`Batches${Kw()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${I("run",We)}
        <div class="row">${Gw()} ${Qw()}</div>
        ${v({question:"Cavities at each filling",at:We,asked_at:`${We}/fill`,chosen:g("run",`${We}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:e=>dm("fill",e==="full"?e:void 0)})}`})}function Kw(){let[e,t]=[`${We}/pieces`,`${We}/casts`].map(o=>M("run",o)),n=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function dm(e,t){let n=K("run",We,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function Gw(){let e=g("run",`${We}/casts`)!==void 0,t=(n,o)=>p({label:o,at:`${We}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0});return qe()?g("run",`${We}/pieces`)!==void 0?r`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${Yw}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function Yw(){C("run","Counted in loaves",We,dm("pieces",void 0))}function Qw(){let e=`${We}/whippings`;return!Ee()&&g("run",e)===void 0?u:p({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var Zw=500,Xw=()=>_(a.run.now,"/cut")===void 0&&(a.plan?.pour.brimful_ml??0)>=Zw;function cm(e){de("set-up cut"),C("run","Cut","/cut",{bar:Ka[e],kerf:""},ge("run",`/cut/bar/${Object.keys(Ka[e])[0]}`))}function eb(){C("run","Left whole","/cut",void 0,le("cut-into-bars"))}function pm(){return Xw()?r`<button type="button" id="cut-into-bars" @click=${()=>cm("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>cm("slab")}>Cut it into bars</button>`:u}var Ka={loaf:{thickness:""},slab:{length:"",width:""}};function tb(){let e=g("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var nb={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function mm(){let e=tb(),t=(o,i)=>p({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=M("run","/cut/along");return r` ${v({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>Ka[o]})}
    <div class="row">
      ${e==="loaf"?p({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${e==="slab"?["length","width"].map(o=>p({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${p({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf is what each cut wastes: 0 mm for a wire.</p>
    ${e?v({question:e==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:nb[e],puts:o=>o||void 0}):u}
    <button type="button" @click=${eb}>Leave it whole</button>`}var ob={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Ve={at:"/dust"},As=e=>M("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function fm(){de("set-up dust"),z(Ve,{name:""},"Dust")}function ib(e){return g("run",`${e}/per_piece`)!==void 0?"piece":g("run",`${e}/on_covered_surface`)===void 0?void 0:"surface"}function hm(e){let t=`/dust/${e}`,n=ib(t),o=As(e),i=s=>({...K("run",t,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...ob[s]});return r` ${p({label:"Which powder",at:`${t}/name`})}
  ${v({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?p({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${p({label:"Powder on the covered surface",at:`${t}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${p({label:"Share of the surface covered",at:`${t}/coverage`,unit:"%",short:!0})}
            ${p({label:"Share of the powder that sticks",at:`${t}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${Nt("run",t,o)}`}var sb={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function rb(e){return["on_top","buried"].find(t=>g("run",`${e}/${t}`)!==void 0)??"by number"}function gm(e,t){let n=rb(e),o=i=>({...K("run",e,["on_top","buried"]),...sb[i]});return Ds(e)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:P({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>r` ${v({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?ab(`${e}/on_top`):n==="buried"?ub(e,t):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function ab(e){return r`<div class="row">
      ${p({label:"Pressed into the top",at:`${e}/pressed_in`,unit:"mm"})}
      ${p({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${_m(e,"It is turned")}`}function _m(e,t){let n=o=>p({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return P({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var lb=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function ub(e,t){let n=`${e}/buried`,o=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),i=g("run",`${n}/placed`);return r`${I("run",n)}
  ${p({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between it and wall, floor, pour line and the next one."})}
  ${v({question:"When is it set in?",at:`${n}/placed`,chosen:i,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:s=>s})}
  ${v({question:"Where in the pour?",at:e,asked_at:`${n}/arrange`,chosen:o,answers:lb,puts:s=>cb(e,s)})}
  ${o==="said"?mb(e,t):u}`}var db=()=>r`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${A`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,$m={x:"",y:"",height:""};function cb(e,t){let n=K("run",`${e}/buried`,["arrange","places"]);if(t!=="said")return{...g("run",e),buried:{...n,arrange:t}};let o=Number(g("run",`${e}/${ni(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>$m);return{...K("run",e,["per_piece","per_cast"]),[wm(e)]:i.length,buried:{...n,places:i}}}var wm=e=>qe()?"per_cast":ni(e)??"per_piece";function pb(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,l)=>F(s,`${e}/${l}`,void 0),n);return F(i,`${e}/${wm(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function mb(e,t){let n=pb(e),o=S(n);return r`${db()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let l=`${n.at}/${s}`,d=c=>p({label:`Place ${s+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return r`<div class="part" id=${N(n,s)} role="group" aria-label="Place ${s+1} of ${Jt(t)}">
        ${I("run",l)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${V(n,s,`place ${s+1} of ${Jt(t)}`)}
        </div>
        ${_m(l,`Place ${s+1} is turned`)}
      </div>`})}
    ${J(n,"Add a place",()=>z(n,$m,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var bm=e=>`${e} made`;function fb(){let e=lo(S(we).length),t=qe()?{}:{per_piece:""};de("set-up decorate");for(let n of[bm(e),`${e} where`])Qn("run",n);z(we,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function ym(){let[e,t]=[S(we).length>0,S(Ve).length>0];return r`${J(we,e?"Add another decoration":"Add a decoration",fb)}
  ${J(Ve,t?"Add another dust":"Add a dust",fm)}`}function vm(e){let t=lo(e);return r` ${I("run",t)} ${$b(t)}
    <div class="row">
      ${hb(t)} ${p({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${p({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
      ${p({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
      ${p({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}
    </div>
    ${gm(t,e)} ${Nt("run",t,Jt(e))}`}function hb(e){let t=ni(e),n=pe("run",`${e}/buried/places`).length;if(n&&n===g("run",`${e}/${t}`)&&!(qe()&&t==="per_piece"))return r``;let o=t==="per_cast"?qe()?"In each loaf":"In each cast":qe()?"On each bar":"On each piece",i=s=>({...K("run",e,["per_piece","per_cast"]),[s]:t?g("run",`${e}/${t}`):""});return r`${qe()?v({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${t?p({label:o,at:`${e}/${t}`,count:!0,short:!0}):u}`}var gb={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function _b(e,t){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle",...t==="drizzle"?["on_top","buried"]:[]];return{...K("run",e,n),...gb[t]}}function $b(e){let t=Ds(e),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","time_per_tray_fill"].map(o=>`${e}/${o}`);return P({name:bm(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>r` <div class="row">
          ${p({label:"What it is called",at:`${e}/name`})}
          ${p({label:"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${v({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>_b(e,o)})}
        ${t?wb[t](e):u}
        ${p({label:"To fill all trays once, setting included",at:`${e}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var wb={mould:bb,rod:e=>r`<div class="row">
      ${p({label:"Rod, diameter",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${p({label:"Rod, length",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>r`<div class="row">
      ${p({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${p({label:"Thickness",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function bb(e){let t=g("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return r`${Yn("Cast in",`${e}/mould`,a.files?.moulds)}
  ${v({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?p({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):p({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${v({question:"What makes one?",at:`${e}/cast_as`,chosen:g("run",`${e}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}function km(){let e="/lye_pot",t=g("run",e)!==void 0;return!t&&!Ee()?u:r`${Ur(e,"Make one pot of lye solution for both",t,{})}
  ${t?p({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function xm(e){let t={at:"/bottles"},n=S(t);return P({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${e&&G(e)?` Weights are of ${G(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${t.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${N(t,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${V(t,i,l)}
            </div>
            ${I("run",s)}
            <div class="row">
              ${p({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${p({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${e?yb(e,i,l):u}
          </div>`})}
        ${J(t,"Use up a bottle",()=>z(t,{name:"",holds:""},"bottle"))}`})}function yb(e,t,n){let o=e.bottles?.[t];return o?.name!==n?u:o.parts.map((i,s)=>k({key:`bottle.${t}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${T(i.percent_of_batter,2)} % of the batter`,shown:j(a.units,se(i,"")),size:"weigh",of:`${e.place}.bottles.${t}.parts.${s}.g`}))}var oi="/label",Ya=()=>g("run",oi)!==void 0;function Tm(){let t=g("studio",uo.studio)!==void 0?{weight_spread:""}:{market:""};de("set-up label"),C("run","Label added",oi,t,le("lane-label"))}function Sm(){return r`${I("run",oi)} ${vb()}
    <button type="button" @click=${()=>C("run","Label removed",oi,void 0)}>Remove the label</button>`}var uo={run:"/label/market",studio:"/label/market"};function Qa(){let{of:e,at:t}=Uo(uo);return r`${v({of:e,question:"Where it is sold",at:e==="run"?oi:t,asked_at:t,chosen:g(e,t)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>e==="run"?kb(n):n})}
  ${Zn("Where it is sold",[uo])}`}function vb(){let e=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${Qa()}
  ${v({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:e,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:xb})}
  ${e==="weighed"?Tb():r`<div class="row">
          ${p({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${p({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${p({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${_n(uo)==="EU"||g("run",Ga)!==void 0?Ur(Ga,"With the e mark",g("run",Ga)===!0,!0):u}`}var Ga="/label/e_mark";function kb(e){return{...K("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function xb(e){let t=K("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return e==="weighed"?{...t,weighed_pieces:["","",""]}:t}function Tb(){let e={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${S(e).map((t,n)=>r`<div class="row" id=${N(e,n)}>
            ${p({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${V(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${J(e,"One more piece",()=>z(e,"","piece"))}`}function ii(e){let{whole:t,batch:n}=e,o=Ed(t,n);return r`<h3 class="batch-head of-plan ${jn(t)?"of-sizes":""}">
      One batch: ${et(t,n)}${o?r`<span>, ${o}</span>`:u}
    </h3>
    ${jn(t)?r`<div class="sizes">
            ${_e("Which batch is weighed",String(Ir(t)),t.batches.map((i,s)=>[String(s),et(t,i)+(i.count>1?`, ${Co(i.count)}`:"")]),Sb)}
          </div>`:u}`}function Sb(e){let t=a.plan;f({batch:Number(e)}),U(`One batch: ${et(t,t.batches[a.batch])}`)}function Rm(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,s=e.batches.map(c=>`${jn(e)?`${c.count} of `:""}${et(e,c)}`),l=`Made in ${t} batches${jn(e)?": ":" of "}${Nn(s)}; ${Hi(n,o)}.`,d=e.batch_limits.filter(c=>c.sets);return r`<div class="batches-told of-plan">
    ${te(e)?r`<p><b>${l}</b></p>`:u}
    ${i>0?r`<p>
            ${ae(i,e.cut?"bar":"piece")} beyond the order ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?r`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${e.around.length?r`<p><span class="called">One fewer, one more:</span> ${e.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var Pm=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function Dm(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.decorations?.find(c=>!c.buried&&c.cavity_fills>0),s=i?Fm(i):0,l=i?i.on_top?.stands_proud_mm??1.9*s:0,d=e.pipe?Rb(e,t,n,l):0;return{brim:n,line:o,topping:d,ball:s,proud:l,top:Math.max(n,(e.pipe?n:o)+d+l)}}function Rb(e,t,n,o){let i=Hn(_(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(e.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[l,d]=mr(t,t.brim-.01),c=Math.PI/4*(d-l)**2;return 1500*e.pipe.visible_each_ml/c}function Za(e,t){let[n,o]=mr(e,e.brim-.01),i=(n+o)/2,s=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),d=m=>-(t.brim+t.topping*m/s),c=(m,$,y)=>{let x=i+y*(Math.max(l(m),l($))+(o-n)*.035);return`C${x} ${d(m)} ${x} ${d($)} ${i+y*l($)*($?.94:1)} ${d($)}`},h=`M${n} ${d(0)}`;for(let m=0;m<s;++m)h+=c(m,m+1,-1);h+=`L${i+l(s)*.94} ${d(s)}`;for(let m=s;m>0;--m)h+=c(m,m-1,1);return`${h}Z`}var si=(e,t)=>e===t?`shaded ${t}`:"plain";function qt(e,t,n=u){return r`${Am(e,t,n)}
  ${e==="decorate"&&Xa(t)?r`<p class="hint">${Xa(t)}</p>`:u}`}var Vt=(e,t)=>r`<div class="small-view">${Am(e,t,u)}</div>`;function Am(e,t,n){let o=a.measured?.outline;if(!o)return r`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=Dm(t,o),s=o.right-o.left,l=Math.max(6,s*.1),d={x:o.left-l,y:-i.top-l,w:s+2*l,h:i.top+2*l};return r`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${Ib(e,t)}>
      ${Pb(e)} ${Db(e,t,o,i)} ${Mb(e,t,o,i)} ${Ob()}
      ${Fb(e,t,o,i)} ${Eb(e,t,o,i)}
      ${A`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function Mm(e,t){let n=a.measured.outline,o=Dm(e,n),i=n.right-n.left,s=Math.max(6,i*.1),l=o.top+2*s;return{share:(o.top+s-t)/l,per_mm:1/l,w:i+2*s,h:l}}function Pb(e){return A`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${Pm(Om())} /></clipPath>
  </defs>`}function Om(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function Db(e,t,n,o){let i=e==="cut"?"pour":e,s=t.pour.layers??[],l=(s.length?s.map(d=>Ab(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return A`<g clip-path="url(#cavity-${e})">${l.map((d,c)=>A`<path class="whole" d=${d} /><path class="${si(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?A`<path fill="url(#hatch-${e})" d=${d} />`:u}`).reverse()}</g>`}function Ab(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function Mb(e,t,n,o){if(!t.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String(_(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,l=(n.left+n.right)/2;return A`<g clip-path="url(#cavity-${e})"><rect class=${si(e,"pipe")} x=${l-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function Ob(){return A`<path class="wall" fill-rule="evenodd" d=${Pm(Om())} />`}function Fb(e,t,n,o){let i=(n.left+n.right)/2,s=t.pipe?o.brim:o.line,l=t.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(h=>({embed:h,one:d,i:c})))??[];return A`
    ${t.pipe?A`<path class=${si(e,"pipe")} d=${Za(n,o)} />${e==="pipe"?A`<path fill="url(#dots-pipe)" d=${Za(n,o)} />`:u}`:u}
    ${e==="dust"?Cb(t,n,o):u}
    ${o.ball?A`<circle class=${si(e,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:d,one:c,i:h})=>Lb(si(e,"decorate"),i,d,c,h))}`}function Cb(e,t,n){let o=`M${t.left} ${-n.line}H${t.right}`;return A`<path class="powder" d=${e.pipe?Za(t,n):o} />`}function Lb(e,t,n,o,i){let[s,l]=[t+n.middle_mm[0],n.middle_mm[2]],d=Hn(_(a.run.now,`/decorations/${i}/rod/diameter`)),c=Hn(_(a.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return A`<circle class=${e} cx=${s} cy=${-l} r=${Fm(o)} />`;let[h,m]=[n.turn[0][0],n.turn[2][0]],$=Math.min(1,Math.hypot(h,m)),y=d/2*Math.sqrt(1-$*$),x=c*$+2*y,E=-180/Math.PI*Math.atan2(m,h);return A`<rect class=${e} x=${-x/2} y=${-d/2} width=${x} height=${d} rx=${y} ry=${y?d/2:0}
    transform="translate(${s} ${-l}) rotate(${E})" />`}var Fm=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function Xa(e){let t=(e.decorations??[]).filter((n,o)=>_(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function Eb(e,t,n,o){if(e!=="cut"||!t.cut)return u;let i=Math.max(t.cut.rows,t.cut.columns);return A`${Array.from({length:i-1},(s,l)=>{let d=n.left+(n.right-n.left)*(l+1)/i;return A`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function Ib(e,t){let n=R(fe(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${Xa(t)}`.trim()}var Bb=e=>`set-up ${e}`;function Ae({name:e,title:t,drawing:n,result:o,about:i,form:s}){let l=Bb(e),d=()=>ze({part:t,fold:l},s);if(Eo())return r`${d()}`;i.some(([m,$])=>Je(m,$))&&de(l);let c=a.open.has(l),h=Kn().filter(({folds:m})=>m.includes(l)).length;return r`<section class="lane ${e} ${c?"is-open":""}" aria-labelledby="lane-${e}">
    <div class="part-line">
      ${c||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${e}" tabindex="-1">${t}</h2>
        ${o} ${h?r`<p class="lacks">${h} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${t}"
        @click=${()=>Ot("open",l)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?r`<div class="lane-body">${d()}</div>`:u}
  </section>`}var oe=e=>r`<p class="order ${a.is_old?"old":""}">${e}</p>`;var Cm=()=>S(we).length>0,Lm=()=>S(Ve).length>0;function Em(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function Im(e){let t=e?S(we).flatMap((n,o)=>jm(e,o)??[]):[];return Ae({name:"decorate",title:"Decorate",drawing:e&&(()=>Vt("decorate",e)),result:t.length?t.map(n=>jb(e,n)):oe(Bm(we,Jt)),about:[["run",we.at]],form:()=>r`${e?r`<div class="side">${qt("decorate",e)}</div>`:u}
        <div class="weights">${e?S(we).map((n,o)=>Wb(e,o)):u}</div>
        ${Nm(we,Jt,vm)}`})}var Bm=(e,t)=>`${S(e).map((n,o)=>t(o)).join(", ")}, not yet with figures.`;function Wb(e,t){let n=jm(e,t);return n?Nb(e,n,t):u}function Wm(e){let t=e?.dust?.length?S(Ve).map((n,o)=>Ub(e,o)):void 0;return Ae({name:"dust",title:"Dust",drawing:e&&(()=>Vt("dust",e)),result:t??oe(Bm(Ve,As)),about:[["run",Ve.at]],form:()=>r`<div class="side">${e?qt("dust",e):u}</div>
        <div class="weights">${e?S(Ve).map((n,o)=>zb(e,o)):u}</div>
        ${Nm(Ve,As,hm)}`})}var jm=(e,t)=>Em(e.decorations,S(we),M("run",`/decorations/${t}/name`),t);function Nm(e,t,n){return r`<div class="all-questions">
    ${S(e).map((o,i)=>r`<section class="questions" id=${N(e,i)} aria-labelledby="${N(e,i)}-title">
          <div class="part-head">
            <h3 id="${N(e,i)}-title">${t(i)}</h3>
            ${V(e,i,t(i))}
          </div>
          ${ze({part:t(i)},()=>n(i))}
        </section>`)}
  </div>`}function jb(e,t){let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"",o=R(j(a.units,se(t,"make_")));return oe(r`Cast <b>${t.casts}</b> of ${t.name} ahead${n}, from <b>${o}</b> of
      ${t.material}${te(e.whole)?", for the whole run":""}.`)}function Nb(e,t,n){return r`<h3>${t.name} ${te(e.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${k({key:`set-up.decorations.${n}.make`,label:`Melt of ${t.material}`,shown:j(a.units,se(t,"make_")),of:`decorations.${n}.make_g`})}
    ${k({key:`decorations.${n}.each`,label:"Each weighs",note:`${T(t.volume_each_ml,2)} ml`,shown:O(a.units,t.mass_each_g,2),of:`decorations.${n}.mass_each_g`})}
    ${t.casting_s?r`<p>${Wt(t.casting_s)} of casting.</p>`:u} ${Hb(t,n)}`}function Hb(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return u;let i=l=>l===null?"not known":R(fe(a.units,l)),s=l=>{let d=(o?.embeds??[]).map(l).filter(c=>c!==null);return d.length?R(fe(a.units,Math.min(...d))):"nothing near"};return r`<h4>Fit of ${e.name}</h4>
    <dl class="facts">
      ${n?r`<div>
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
      ${o?r`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${s(l=>l.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${s(l=>l.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${s(l=>l.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${s(l=>l.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${T(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${hn(`decorations.${t}.fit`,"How the fit is measured",`decorations.${t}.${n?"on_top":"buried"}`)}`}function Ub(e,t){let n=Hm(e,t);if(!n)return u;let o=G(e);return oe(r`<b>${R(j(a.units,se(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var Hm=(e,t)=>Em(e.dust,S(Ve),M("run",`/dust/${t}/name`),t);function zb(e,t){let n=Hm(e,t);if(!n)return u;let o=g("run",`/dust/${t}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=k({key:`set-up.dust.${t}`,label:n.name,note:G(e),shown:j(a.units,se(n,"")),of:`${e.place}.dust.${t}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function Um(e){let t=e?.cut;return Ae({name:"cut",title:"Cut",drawing:e&&(()=>Vt("cut",e)),result:t?Jb(e,t):oe("Cut into bars, not yet with figures."),about:[["run","/cut"]],form:()=>r`${t?qb(e,t):u}
        <div class="all-questions">${mm()}</div>`})}var Jb=(e,t)=>oe(r`Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}; a bar is
      ${R(O(a.units,e.piece.fresh_g))} on average, fresh.`);function qb(e,t){return r`<div class="side">${qt("cut",e)}</div>
    <div class="weights">
      ${k({key:"cut.bar",label:"A bar on average, fresh",note:Vb(t),shown:O(a.units,e.piece.fresh_g),of:"cut.bars_each"})}
      ${k({key:"cut.offcuts",label:"Offcuts",shown:O(a.units,t.offcuts_g),of:"cut.offcuts_g"})}
      ${Kb(t)}
    </div>`}function Vb(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${T(n,1)} to ${T(o,1)} g`}function Kb(e){return e.one_more?.length?r`<ul class="limits">
    ${e.one_more.map(t=>r`<li>Cut to ${t.size_text} along ${t.direction}: ${t.bars} bars from each.</li>`)}
  </ul>`:u}function zm(e){return Ae({name:"label",title:"Label",drawing:Yb,result:oe(Gb(e)),about:[["run","/label"]],form:()=>r`<div class="more">${Sm()} ${e?Ua(e):u}</div>`})}function Gb(e){let t=e?.piece.label_g;return!e?.label||t===null||t===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${R(O(a.units,t,0))}</b>, sold in the ${e.label.market}.`}var Yb=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${A`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var Gt="/pour/layers",Kt={at:Gt,in_order:!0},el=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Os=()=>S(Kt);function Qb(){let e=t=>Os().some(n=>t in n);return el.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function qm(e){let t=Os(),n=Qb();return t.length?r`<h3>
      Layers, lowest first ${e&&G(e)?r`<small>${G(e)}</small>`:u}
    </h3>
    ${v({question:"All of them by",at:Gt,is_told_elsewhere:!0,chosen:n,answers:el,puts:o=>Xb(o,e)})}
    <div class="items">${t.map((o,i)=>ey(o,i,n,e))}</div>
    ${J(Kt,"One more layer on top",()=>z(Kt,{name:Zb(t),[n]:""},"layer"))}`:r`<p class="choice">
      ${J(Kt,"Pour it in layers",()=>z(Kt,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function Zb(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function Vm(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function Xb(e,t){let n=Os(),o=a.is_old?void 0:t,i=(s,l)=>{let d=Vm(o,s,l);return e==="parts"||!d||e==="depth"&&"tilted"in s?"":e==="depth"?`${T(d.to_mm-d.from_mm,3)} mm`:`${T(d.mass_each_g,3)} g`};return n.map((s,l)=>{let d=Ms(l),c=e!=="parts"&&n.length>1&&l===n.length-1;return{...d,...c?{rest:!0}:{[e]:i(s,l)}}})}var Ms=e=>K("run",`${Gt}/${e}`,[...el.map(([t])=>t),"rest"]);function ey(e,t,n,o){let i=`${Gt}/${t}`,s=String(e.name)||`Layer ${t+1}`,l=Vm(o,e,t);return r`<div class="part" id=${N(Kt,t)} role="group" aria-label="Layer ${s}">
    ${l&&o?ty(o,l,t):r`<p class="part-title">${s}</p>`} ${I("run",i)}
    ${oy(e,t,n,s)}
    ${o&&l?l.colours.map((d,c)=>ny(o,d,t,c)):u}
    ${P({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>r` ${p({label:"Name of the layer",at:`${i}/name`})} ${ay(i,s)} ${ly(i,t)}
        ${V(Kt,t,s)}`})}
  </div>`}function ty(e,t,n){return k({key:`pour.layer.${n}`,label:t.name,note:`${jr(fe(a.units,t.to_mm-t.from_mm))} thick, ${jr(O(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?O(a.units,t.g):j(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.g`})}function ny(e,t,n,o){return k({key:`pour.layer.${n}.${o}`,label:t.name,note:t.teaspoons?`about ${T(t.teaspoons,1)} tsp`:"",shown:bt(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.colours.${o}.g`})}function oy(e,t,n,o){if(n==="parts")return iy(e,t,o);let i="rest"in e;return r`${i?u:p({label:`${o}, ${n}`,at:`${Gt}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?ry(t,n):sy(t,n)}
    >
      Takes the rest
    </button>`}function iy(e,t,n){let o=`${Gt}/${t}/parts`,i=s=>()=>{f({typed:void 0}),B("run",o,Math.max(1,(Number(e.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${p({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function sy(e,t){let n=Os().map((o,i)=>i===e?{...Ms(i),rest:!0}:o.rest?{...Ms(i),[t]:""}:o);C("run","takes the rest",Gt,n)}function ry(e,t){let n=`${Gt}/${e}`;C("run","amount of the layer",n,{...Ms(e),[t]:""},ge("run",`${n}/${t}`))}function ay(e,t){let n={at:`${e}/colours`,in_order:!0};return r`${S(n).map((o,i)=>{let s=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${N(n,i)} role="group" aria-label="${l} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${V(n,i,l)}
      </div>
      ${I("run",s)}
      <div class="row">
        ${p({label:"Colour",at:`${s}/name`})}
        ${p({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${p({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${Nt("run",s,l)}
    </div>`})}
  ${J(n,"Add a colour",()=>z(n,{name:"",rate:""},"colour"))}`}var Jm=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function ly(e,t){let n=`${e}/tilted`,o=g("run",`${n}/low_side`);return t===S(Kt).length-1&&g("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:kt({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${p({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${v({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:Jm,puts:s=>s})}
        ${P({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!Jm.some(([s])=>s===o),body:()=>p({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var nt=()=>_(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function tl(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=nt()==="depth"?n-o:o;f({typed:void 0}),B("run",`/pour/line/${nt()}`,`${T(i,2)} mm`)}function Km(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=Hn(_(a.run.now,`/pour/line/${nt()}`));return n===void 0?e.pour.below_brim_mm:nt()==="depth"?t-n:n}function uy(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=l=>t((l.clientY-e.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,s)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,s)}function dy(e){if(!a.measured)return u;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=Km(e),{share:o,h:i}=Mm(e,t-n),s=c=>uy(c,h=>tl(e,n+h*i)),l=c=>{let h={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];h!==void 0&&(c.preventDefault(),tl(e,n+h))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${T(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${R(fe(a.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function cy(e){let{pour:t}=e,n=R(fe(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each",s=G(e);return oe(r`${o}, <b>${R(O(a.units,t.mass_each_g))}</b> ${i}; make
      <b>${R(O(a.units,t.make_g))}</b>${s?` for ${s}`:""}.`)}var Gm=()=>nt()==="depth"?"Depth":"Below brim";function Ym(e){return Ae({name:"pour",title:"Pour",drawing:e&&(()=>Vt("pour",e)),result:e?cy(e):oe(`${py()}.`),about:[["run","/pour"]],form:()=>r`${e?my(e):fy()}
        <div class="more">${Fs("pour")} ${qm(e)} ${rs("pour")}</div>`})}function py(){let e=M("run",`/pour/line/${nt()}`);return e?`${e} ${nt()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function my(e){let{pour:t}=e,n=`${e.place}.pour`,o=i=>()=>tl(e,Km(e)+i);return r`<div class="side">
      ${qt("pour",e,dy(e))} ${Qm(e)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${p({label:Gm(),at:`/pour/line/${nt()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${k({key:"pour.each",label:"Weigh into each",shown:O(a.units,t.mass_each_g),note:`${T(t.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${k({key:"pour.mm",label:"1 mm more or less",shown:me(a.units,t.ml_per_mm,2),note:`${ct(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${k({key:"set-up.pour.make",label:"Base to make",note:G(e),shown:O(a.units,t.make_g),of:`${n}.make_g`})}
      ${k({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var fy=()=>r`<div class="side">
    ${Qm()} ${I("run","/pour/line")}
    ${p({label:Gm(),at:`/pour/line/${nt()}`,unit:"mm"})}
  </div>`,Fs=e=>r`<button type="button" @click=${()=>He(e)}>
    Change the formula of the ${e==="pour"?"base":"topping"}
  </button>`;function Qm(e){let t=n=>{if(n===nt())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;C("run","pour line","/pour/line",{[n]:o===void 0?"":`${T(o,3)} mm`})};return _e("The pour line is measured",nt(),[["below_brim","From the brim"],["depth","From the floor"]],t)}var hy=[0,50,80,100];function Zm(e){let t=e?.pipe;return Ae({name:"pipe",title:"Pipe",drawing:t&&(()=>Vt("pipe",e)),result:t?gy(e,t):oe("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>t?_y(e,t):$y()})}function gy(e,t){let n=G(e);return oe(r`Pipe <b>${T(t.volume_each_ml,0)} ml</b> on each, ${R(O(a.units,t.mass_each_g))} at this
      whipped density; make <b>${R(O(a.units,t.make_g))}</b>${n?` for ${n}`:""}.`)}function _y(e,t){return r`<div class="side">
      ${qt("pipe",e)}
      ${k({key:"pipe.each",label:"Topping on each",shown:me(a.units,t.volume_each_ml),note:`${T(t.in_headspace_each_ml,1)} ml of it below the brim`,of:`${e.place}.pipe.volume_each_ml`})}
      ${k({key:"set-up.pipe.make",label:"Topping to make",note:G(e),shown:O(a.units,t.make_g),of:`${e.place}.pipe.make_g`})}
      ${k({key:"pipe.density",label:"Whipped density",note:`overrun ${T(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],of:`${e.place}.pipe.density_g_per_ml`})}
      ${Fs("pipe")}
    </div>
    <div class="weights">${ha(t)} ${tf()} ${wy(e)} ${Ty(e)}</div>
    <div class="more">${fa(t)} ${ma()}</div>`}var Yt=e=>e===0?"pipe":`pipe.whipping${e}`,St=(e,t)=>`${e.place}.pipe.whippings.${t}`;function Cs(e,t){let n=cn(e,t);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function $y(){return r`<div class="more">${fa()}</div>
    <div class="side">${tf()} ${g("run","/pipe/whip_now")===void 0?u:ef()}</div>
    <div class="weights">${ha()} ${Fs("pipe")}</div>
    <div class="more">${ma()}</div>`}var Xm=e=>G(e)?r`<small>${G(e)}</small>`:u;function wy(e){return r`<h3>Today's bowl ${Xm(e)}</h3>
    ${ef()} ${e.whippings.map((t,n)=>by(e,t,n))}`}function by(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${t.pieces} to make.`;return r`${Cs(e,t)}
  ${o==null?u:k({key:`${Yt(n)}.now`,label:"Enough for",note:s,shown:[ae(o,"piece"),""],size:"weigh",of:`${St(e,n)}.pieces_now`})}
  ${vy(e,t,n)}`}function ef(){let e=g("run","/pipe/whip/holds"),t=e===void 0?qo():{holds:e,net:""};return kt({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:t,body:yy})}function yy(){return r`<div class="row">
    ${p({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${Vo("/pipe/whip_now")}
  </div>`}function vy(e,t,n){return t.readings?.length?P({name:`${Yt(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>ky(e,t,n)}):u}function ky(e,t,n){return r`<table class="readings">
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
        ${t.readings?.map(o=>r`<tr class=${o.planned?"planned":""}>
              <th scope="row">${T(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${T(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${hn(`${Yt(n)}.readings`,"Show the calculation",`${St(e,n)}.readings`)}`}function tf(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(M("run",e))?.[1]?.replace(",",".")),n=Je("run",e);return r`<h3 id="recess">How much of the headspace below the brim does the topping fill?</h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${hy.map(o=>r`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>B("run",e,`${o} %`)}
          >
            ${xy(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${p({label:"Headspace filled, as a share",at:e,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function xy(e){let t=52*(e/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${A`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function Ty(e){let t=e.whippings.map(i=>({one:i,words:Sy(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?u:r`<h3>Limits of whisk, bowl and time ${Xm(e)}</h3>
    ${t.map(({one:i,words:s})=>r`${Cs(e,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${hn("pipe.limits","How the limits come about",`${St(e,0)}.limits`)}`}function Sy({piping_s:e,lye_spoonfuls:t}){return[e?`${Wt(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${Wt(t.altogether_s)}`:""].filter(Boolean).join("; ")}function of(e){return Ae({name:"lye",title:"Lye",drawing:Py,result:e?nf(e).map(Ry):oe("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${e?r`<div class="more jugs">${nf(e).map(Dy)} ${ol(e)}</div>`:u}
        <div class="more">${km()} ${xm(e)}</div>`})}function nf(e){let{pieces:t}=e.batch,n={slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:t,key:"pour"},o=e.whippings.map((i,s)=>{let l=cn(e,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:St(e,s),pieces:t,key:Yt(s)}});return[n,...o]}function Ry({title:e,batter:t,slot:n,pieces:o}){let i=dt(n,o).length?" \u26A0":"";return oe(r`${e}: ${T(t.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${Ue(t.superfat_percent.effective)}${i}</b>.`)}var Py=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${A`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function Dy({slot:e,title:t,batter:n,place:o,pieces:i,key:s}){let{effective:l}=n.superfat_percent,d=dt(e,i).length>0,c=`danger-set-up-${s.replaceAll(".","-")}`,h=s===e;return r`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${k({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${T(n.water_to_pure_alkali,2)} : 1 to alkali; water ${T(n.water_percent_of_fats,1)} % of the fats`,shown:[`${T(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${k({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${Ue(l)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`})}
    ${dn(e,c,i)} ${Ls(n.superfat_percent)} ${nl(n,o,s)}
    ${!h||g(e,"/superfat")===void 0?u:p({label:"Planned superfat",of:e,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Ls(e){let{low:t,high:n,likely_low:o,likely_high:i,uncertainties:s}=e,l=`It lies between ${Ue(t)} and ${Ue(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${Ue(o)} and ${Ue(i)}.`,c=s[0],h=c?r` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return Wr(t)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${d}
    ${c?h:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${l}${d} Some fat is left over even at the lowest.${h}</p>`}function nl(e,t,n){return e.heat?r`${sf(e.heat)} ${hn(`${n}.heat`,"How the heat is worked out",`${t}.heat`)}`:u}function sf(e){let t=o=>R(Kd(a.units,o)),n=e.cooling.map(o=>`${o.shortest_min*60?Wt(o.shortest_min*60):"at once"} to ${Wt(o.longest_min*60)} in ${o.in}`);return r`<p class="aside of-plan">
    Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at
    ${t(e.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function ol(e){let t=e.lye_pot;if(!t)return u;let{units:n}=a,o=(i,s,l,d,c="")=>k({key:`pot.${i}`,label:s,note:c,shown:l,size:"weigh",of:`${e.place}.lye_pot.${d}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${T(t.strength_percent,1)} %${G(e)&&`; ${G(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",j(n,se(t,"water_")),"water_g")}
    ${t.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,j(n,se(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",j(n,se(t,"lye_")),"lye_g",Ay(t))}
    ${t.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,j(n,se(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${Ue(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,j(n,se(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${dn(s===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?Ls(i.superfat):u}`)}
    ${t.left_g?r`<p class="aside of-plan">
            ${R(j(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${t.heat?sf(t.heat):u}
  </div>`}function Ay(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=se(e,"lye_"),i=j(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${R(i)} with the pot: make up with water to that after cooling`}var ri=new Map,My=()=>ri.clear(),Oy=e=>typeof e?.owned=="number"?e.owned:void 0;function il(e){let t=Pe(e,a.files?.moulds);return ri.has(t)||(ri.set(t,void 0),Fy(t)),ri.get(t)}async function Fy(e){try{ri.set(e,Oy(q((await X(e)).text))),Ke()}catch(t){if(!(t instanceof b))throw t}}async function rf(e,t){let n=il(e);n!==void 0&&(B("studio",t,n),U(`${n} kept in the studio`),await Cy(Pe(e,a.files?.moulds)),ee())}async function Cy(e){let t=await Re(Se,e);t.shipped||t.theirs||(ce(t,F(t.now,"/owned",void 0)),await lt(t),My())}var Ly={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},af=e=>({run:e,studio:e}),sl=e=>af(`/losses/${e}`);function rl(e,t){return Ly[e].map(({name:n,label:o,unit:i,optional:s})=>ve(af(`/losses/${e}/${n}`),{label:t?`${t}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var wn={run:"/money/currency",studio:"/currency"},al={run:"/money/prices",studio:"/prices"};function df(){let[e,t]=[g("run",wn.run),g("studio",wn.studio)];return e!==void 0&&t!==void 0&&e!==t?[]:[wn,al]}var lf=()=>a.plan?.piece.cost?.materials.map(e=>e.name)??[],uf=e=>a.fats.find(t=>t.id===e)?.name??e;function cf(){if(_n(wn)===void 0)return r`<button type="button" @click=${Ey}>Add what you paid</button>`;let e=(t,n)=>{let o=`/${ke(t)}/${n}`;return{run:al.run+o,studio:al.studio+o}};return r`<div class="row">
      ${ve(wn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${lf().map(t=>r`<div class="row">
            ${ve(e(t,"paid"),{label:`${uf(t)}, paid`,optional:!0,takes_part:!0,short:!0})}
            ${ve(e(t,"for"),{label:`for how much ${uf(t)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
          </div>`)}
    </div>
    ${lf().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function Ey(){let e=ye()?"studio":"run",t=e==="studio"?wn.studio:wn.run;C(e,"Prices added",t,"",ge(e,t))}var co=e=>({run:e,studio:e}),ll=e=>({run:`/pipe/${e}`,studio:`/${e}`}),Iy=co("/scales"),pf=co("/spoilage"),By=co("/pots");function ul(e){return Ae({name:"studio",title:"My studio",result:oe(Wy()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>jy(e)})}function Wy(){let e=a.beside.studio?.file;return e?r`What is the same in every run, kept in ${e}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function jy(e){let t=Ny(e),n=t.flatMap(o=>o.all);return r`${ye()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{ua(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say.
            </p>`}
    <div class="studio-sections">
      ${t.map(({title:o,all:i,body:s})=>r`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${Zn(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>`}function Ny(e){let t=Ee(),n=[{title:"Scales",all:[Iy],body:Hy},{title:"Losses",all:[sl("pour"),...t?[sl("pipe")]:[]],body:()=>Uy(t,e)},{title:"Rejects",all:[pf],body:Jy},{title:"Pot and lye jug",all:[By],body:qy},{title:"Moulds owned",all:mf().map(({shared:o})=>o),body:Ky},{title:"Prices paid",all:df(),body:cf}];return t&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(ll),body:Vy},{title:"Weigh-cups",all:[],body:Nc}),ye()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[uo],body:Qa}),n}function Hy(){let e=(t,n)=>r`${ve(co(`/scales/${t}/step`),{label:`${n}, smallest step`,unit:"g",short:!0})}
    ${ve(co(`/scales/${t}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${e("large","Large scale")} ${e("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function Uy(e,t){return r`<div class="row">
      ${rl("pour",e?"Base":void 0)} ${e?rl("pipe","Topping"):u}
    </div>
    ${t?zy(t):u}`}function zy({pour:e,pipe:t,...n}){let o=G({pour:e,pipe:t,...n}),i=(s,{in_pieces_g:l,lost_g:d})=>`${s}: ${R(O(a.units,l))} in the pieces, ${R(O(a.units,d))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",e)} ${t?i("Topping",t):""}
  </p>`}var Jy=()=>ve(pf,{label:"Rejects",unit:"%",short:!0,optional:!0,hint:"Of all that are made, those that cannot be sold."});function qy(){let e=(t,n,o)=>ve(co(`/pots/${t}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${e("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${e("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function Vy(){let e=(n,o,i,s=!1)=>ve(ll(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),t=n=>_n(ll(n))!==void 0;return r`<div class="row">
    ${e("bowl/holds","Bowl holds","l",t("bowl/whisk_needs"))}
    ${e("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${e("bag_holds","One bag holds","ml")}
    ${e("lye_spoon/holds","Lye spoon holds","ml",t("lye_spoon/time_between"))}
    ${e("lye_spoon/time_between","From one spoonful to the next","s",t("lye_spoon/holds"))}
  </div>`}function mf(){return["/pour",...S(we).map((t,n)=>lo(n))].flatMap(t=>{let n=M("run",`${t}/mould`);return n?[{mould:n,shared:{run:um(t),studio:`/moulds_owned/${ke(da(n))}`}}]:[]})}function Ky(){return r`<div class="row">
    ${mf().map(({mould:e,shared:t})=>{let n=a.files?.moulds.find(s=>s.file===e)?.name??e,o=_n(t)===void 0?il(e):void 0,i=()=>{rf(e,`/moulds_owned/${ke(da(e))}`)};return r`${ve(t,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&ye()?r`<button type="button" aria-label="Move the ${o} of ${n} into my studio" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function dl(e){let t=e&&Bt(e);return r`${cl(e)}
    <div class="set-up">${ff(t)} ${Gy()} ${ul(t)}</div>`}function ff(e){return r`${Ym(e)} ${Ee()?Zm(e):u}
  ${Cm()?Im(e):u} ${Lm()?Wm(e):u}
  ${qe()?Um(e):u} ${of(e)} ${Ya()?zm(e?.whole):u}`}function Gy(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${Ee()?u:r`<button type="button" @click=${Hc}>Add a topping</button>${Uc()}`}
      ${ym()} ${pm()}
      ${Ya()?u:r`<button type="button" @click=${Tm}>Draft the label</button>`}
    </div>
  </section>`}function hf(e=u){return r`<div class="row">
    ${p({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${Yn("Mould","/pour/mould",a.files?.moulds)}
    ${Yn("Base","/pour/formula",a.files?.formulas)}
    ${Ee()?Yn("Topping","/pipe/formula",a.files?.formulas):u} ${e}
  </div>`}function cl(e){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?r`<p class="aside">${a.run.now.note}</p>`:u}
    ${hf(e?Yy(e):u)}
    <div class="batches">${e?Rm(e):u} ${Va()}</div>
  </section>`}function Yy(e){let{sell:t,make:n,fillings:o,cavities:i,casts:s,batches:l}=e.pieces,d=te(e)?`${l} batches, ${ae(o,"filling")}`:Hi(o,i);return k({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${e.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",of:"pieces.make"})}function Qy(){let t=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(Zy);return[ze({part:"Run"},()=>[hf(),Va()]),...t.map(n=>ze({part:String(a.formulas[n].now.name||"Formula")},()=>Rp(n))),ff(),ul()]}var Zy=(e,t,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[e])===t;tc(Qy);var Xy={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function gf(e){let t=s=>s.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(s=>!t(s))],o=s=>r`<ul>
      ${s.map(l=>r`<li class=${l.severity}><strong>${Xy[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function wf(e){let t=`${e.place}.pour`;return r`<div class="lanes">
      <section class="lane pour" aria-label="Base">
        <div class="weights">
          ${ii(e)} ${$f("pour","Weigh for the base",e.pour.formula)}
          ${bf(e.pour,t,"pour")}
          ${k({key:"pour.make",label:"Base to make",shown:O(a.units,e.pour.make_g),size:"weigh",of:`${t}.make_g`})}
        </div>
      </section>
      ${e.pipe?r`<section class="lane pipe" aria-label="Topping">
              <div class="weights">
                ${ii(e)} ${$f("pipe","Weigh for the topping",e.pipe.formula)}
                ${e.whippings.map((n,o)=>tv(e,n,o))}
              </div>
            </section>`:u}
      ${ev(e)}
    </div>
    ${nv(e)}`}function ev(e){return!e.decorations?.length&&!e.dust?.length?u:r`<section class="lane decorate" aria-label="Decorations and dust">
    <div class="weights">
      ${(e.decorations??[]).map((t,n)=>k({key:`decorations.${n}.make`,label:`Melt of ${t.material}`,note:te(e.whole)?"for the whole run":void 0,shown:j(a.units,se(t,"make_")),size:"weigh",of:`decorations.${n}.make_g`}))}
      ${e.dust?.length&&te(e.whole)?ii(e):u}
      ${(e.dust??[]).map((t,n)=>k({key:`dust.${n}`,label:t.name,shown:j(a.units,se(t,"")),size:"weigh",of:`${e.place}.dust.${n}.g`}))}
    </div>
  </section>`}function tv(e,t,n){let o=Yt(n);return r`${Cs(e,t)} ${bf(t,St(e,n),o)}
  ${k({key:`${o}.make`,label:"Topping to make",note:cn(e,t),shown:O(a.units,t.make_g),size:"weigh",of:`${St(e,n)}.make_g`})}`}function nv(e){return r`<section class="shelf" aria-labelledby="shelf-title">
    <h2 id="shelf-title">Lye</h2>
    ${ii(e)}
    <div class="jugs">
      ${_f({slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:e.batch.pieces,key:"pour"})}
      ${e.whippings.map((t,n)=>{let o=cn(e,t);return _f({slot:"pipe",title:`Lye for the topping${o&&`, ${o}`}`,batter:t,place:St(e,n),pieces:e.batch.pieces,key:Yt(n)})})}
    </div>
    ${ol(e)}
  </section>`}function _f({slot:e,title:t,batter:n,place:o,pieces:i,key:s}){let{effective:l}=n.superfat_percent,d=dt(e,i).length>0,c=`danger-${s.replaceAll(".","-")}`;return r`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${Jn(n).map(({one:h,i:m})=>yf(h,m,o,s))}
    ${k({key:`${s}.strength`,label:"Lye strength",note:`water ${T(n.water_to_pure_alkali,2)} : 1 to alkali; water ${T(n.water_percent_of_fats,1)} % of the fats`,shown:[`${T(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${k({key:`${s}.superfat`,label:"Superfat as weighed",shown:[`${Ue(l)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`})}
    ${dn(e,c,i)} ${Ls(n.superfat_percent)} ${nl(n,o,s)}
  </div>`}function ov(e){return e.teaspoons?`about ${T(e.teaspoons,1)} tsp`:""}function iv(e){let t=e.set_aside_for_colours_g?`${R(j(a.units,{g:e.set_aside_for_colours_g,scale_step_g:e.scale_step_g}))} of it for the colours`:"";return[ov(e),t].filter(Boolean).join(", ")}function $f(e,t,n){return r`<div class="weigh-head">
    <h3>${t} <small>${n}</small></h3>
    <button
      type="button"
      @click=${()=>He(e)}
      aria-label="Change the formula ${e==="pour"?"of the base":"of the topping"}"
    >
      Change the formula
    </button>
  </div>`}function bf(e,t,n){return r`${Vi(e).map(({one:o,i})=>yf(o,i,t,n))}`}function yf(e,t,n,o){return k({key:`${o}.${t}`,label:e.name,note:iv(e),shown:bt(a.units,e),size:"weigh",of:`${n}.ingredients.${t}.g`})}var vf=e=>r`${cl(e)} ${wf(Bt(e))}`;var sv={weigh:vf,"set-up":dl,watch:gf,money:Xp,mould:om,print:lm};function kf(e){let{plan:t}=a;return r`${Li().map(n=>qn(n))} ${Ci().map(Vn)} ${ks()}
    <h1 id="run-title" tabindex="-1">${t?.run??String(a.run.now.name??"")}</h1>
    ${t?sv[e](t):rv(e)}`}function rv(e){return a.complaint?e==="set-up"?dl():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var av=()=>{f({new_run:{name:"",mould:"",formula:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function Tf(){let e=a.new_run;if(!e)return r`<p class="choice"><button type="button" class="strong" @click=${av}>New run</button></p>`;let{name:t,mould:n,formula:o}=e,i=t.trim()&&n&&o,s=()=>{De(async()=>{await up({name:t.trim(),mould:n,formula:o}),f({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name">Name</label>
        <input
          id="new-run-name"
          .value=${Y(t)}
          @input=${l=>w(e,{name:l.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${xf(e,"mould","Mould",lv())} ${xf(e,"formula","Base",uv())}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!i} @click=${s}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${i?u:r`<p class="hint">A run needs a name, a mould and a base.</p>`}
  </section>`}var lv=()=>[...(a.files?.moulds??[]).filter(e=>!e.shipped).map(e=>[e.file,e.name||e.file]),...a.catalogue.map(e=>[e.path,e.name])],uv=()=>(a.files?.formulas??[]).map(e=>[e.file,e.name||e.file]);function xf(e,t,n,o){let i=`new-run-${t}`;return r`<div class="field choose">
    <label for=${i}>${n}</label>
    <select id=${i} @change=${l=>w(e,{[t]:l.target.value})}>
      <option value="" .selected=${Y(e[t]==="")}>choose ...</option>
      ${o.map(([l,d])=>r`<option value=${l} .selected=${Y(l===e[t])}>${d}</option>`)}
    </select>
  </div>`}var dv=(e,t)=>(t.changed??"").localeCompare(e.changed??"");function Rf(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped).sort(dv),n=e.filter(o=>o.shipped);return r`${oo("Runs")} ${Tf()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${t.length?r`<ul class="cards">
              ${t.map(Sf)}
            </ul>`:r`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      <ul class="cards">
        ${n.map(Sf)}
      </ul>
    </section>`}function Sf(e){let{pieces:t,mould:n,due:o,made_on:i,changed:s}=e,l=[t===void 0?"":ae(t,"piece"),n??"",o?`due ${zn(o)}`:"",i?`made ${zn(i)}`:s?`changed ${zn(s)}`:""].filter(Boolean);return io({kind:on,one:e,facts:l,picture:cv(n),open:()=>It(e.file)})}var cv=e=>a.files?.moulds.find(t=>t.name===e)?.file??a.catalogue.find(t=>t.name===e)?.path;var Pf=document.getElementById("page");function Df(){let{view:e,fault:t}=a;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${Gp()} ${Dd()}
    <main id="main" tabindex="-1" data-view=${e} class=${a.is_old&&!Ne(e)?"old-now":""}>
      ${t?r`${e==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${t}</p>`:u}
      ${mv()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var pv={runs:Rf,formulas:Np,moulds:Up};function mv(){let{view:e,fault:t}=a;return ut(e)?kf(e):Ne(e)?pv[e]():e==="formula"?Sp():t?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Fl(()=>{hp(),ot(Df(),Pf),Af()});addEventListener("resize",Af);ot(Df(),Pf);document.addEventListener("keydown",e=>{if(!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||Ne(a.view)&&!a.mould)return;e.preventDefault();let{undo:t,redo:n}=Ts();(e.shiftKey?n:t)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return vd();W(a.run)&&Ze()});function fv(){if(!a.run.file)return pl();f({fault:void 0}),W(a.run)&&Ze(),ee()}function pl(){f({fault:void 0}),kp().catch(e=>{f({fault:hv(e)}),e instanceof b&&e.may_pass&&window.setTimeout(pl,2e3)})}function hv(e){return e instanceof b&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}function Af(){let e=document.querySelector(".foremost")?.offsetHeight??0;document.documentElement.style.setProperty("--foremost",`${e}px`)}ld();vp();Il(e=>{to(),e&&fv()});pl();
